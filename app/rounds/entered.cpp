#include "app/rounds/entered.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "core/inspection/check_rules.h"
#include "core/inspection/person.h"
#include "core/layout/units.h"

namespace stopwalk::rounds {
namespace {

using inspection::Result;
using inspection::Tried;

class Words {
  Q_DECLARE_TR_FUNCTIONS(rounds)
};

std::string plain(const QString& text) {
  return text.trimmed().toStdString();
}

// With each text of it under its name.
template <class Value, class Each>
void eachText(Value& entered, Each each) {
  each("note", entered.note);
  each("second", entered.second);
  each("action", entered.action);
  each("tagged_by", entered.tagged_by);
  each("tagged_until", entered.tagged_until);
  each("todo", entered.todo);
  each("owner", entered.owner);
  each("until", entered.until);
}

QString notADay(const QString& until) {
  if (until.isEmpty() || inspection::parseDate(until.toStdString())) return {};
  return Words::tr("Until %1: a day is expected as 2026-03-02.").arg(until);
}

QString contradictionText(Tried test) {
  switch (test) {
    case Tried::Clear:
      return Words::tr("What has something in its way has not passed: choose the failure.");
    case Tried::Legible:
      return Words::tr("What has no legible marking has not passed: choose the failure.");
    case Tried::Latches:
      return Words::tr("What does not stay in when pressed has not passed: choose the failure.");
    default:
      return Words::tr("What does not stay stopped has not passed: choose the failure.");
  }
}

bool namesSomebody(const QString& typed) {
  return !inspection::nameOf(plain(typed)).empty();
}

// A tick in the place of a name, which would be left out of the record.
QString namesNobody(const QString& typed) {
  const QString text = typed.trimmed();
  return text.isEmpty() || namesSomebody(text) ? QString() : Words::tr("%1 is no name.").arg(text);
}

QString failureMissing(const Entered& entered) {
  const QString tagged_until = entered.tagged_until.trimmed();
  if (const QString tick = namesNobody(entered.tagged_by); !tick.isEmpty())
    return Words::tr("Say who tagged the machine out: %1").arg(tick);
  if (!namesSomebody(entered.tagged_by) && !tagged_until.isEmpty())
    return Words::tr("Say who tagged the machine out.");
  if (const QString why = notADay(tagged_until); !why.isEmpty()) return why;
  if (const QString tick = namesNobody(entered.owner); !tick.isEmpty())
    return Words::tr("Say who does what is still to be done: %1").arg(tick);
  const bool todo = !entered.todo.trimmed().isEmpty(), owner = namesSomebody(entered.owner);
  const QString until = entered.until.trimmed();
  if (todo && !owner) return Words::tr("Say who does what is still to be done.");
  if (!todo && (owner || !until.isEmpty())) return Words::tr("Say what is still to be done.");
  return notADay(until);
}

}  // namespace

QString whatIsMissing(const Entered& entered, bool latches) {
  if (const QString bad = badRun(entered.run_down); !bad.isEmpty()) return bad;
  if (!entered.result) return Words::tr("Choose the result: what came of it?");
  if (const QString tick = namesNobody(entered.second); !tick.isEmpty())
    return Words::tr("Say who the second person was, or leave that line empty: %1").arg(tick);
  inspection::Check check;
  check.result = *entered.result;
  check.tested = entered.tested;
  if (const auto test = inspection::contradictsPass(check, latches)) return contradictionText(*test);
  if (check.result == Result::Pass && std::ranges::none_of(check.tested, &std::pair<Tried, bool>::second))
    return Words::tr("Tick what was tried: a pass says nothing without it.");
  return check.result == Result::Pass ? QString() : failureMissing(entered);
}

bool asksForMending(const Entered& entered) {
  for (const QString* text : {&entered.action, &entered.tagged_by, &entered.tagged_until, &entered.todo,
                              &entered.owner, &entered.until})
    if (!text->trimmed().isEmpty()) return true;
  return false;
}

std::optional<double> runTyped(const QString& text) {
  QString number = text.trimmed();
  if (number.endsWith('s')) number = number.chopped(1).trimmed();
  const auto read = layout::parseNumber(number.replace(',', '.').toStdString());
  const bool good = read.ok() && read.value >= 0 && read.value <= inspection::kMostRunDown_s;
  return good ? std::optional(read.value) : std::nullopt;
}

QString runText(double run_s) {
  return QString::fromStdString(layout::numberText(run_s));
}

QString badRun(const QStringList& runs) {
  for (const QString& run : runs)
    if (!runTyped(run))
      return Words::tr("Run-down %1: seconds from 0 to %2 are expected, such as 2.4.")
          .arg(run, QString::number(inspection::kMostRunDown_s));
  return {};
}

void put(const Entered& entered, inspection::Check& check) {
  check.tested = entered.tested;
  check.result = *entered.result;
  check.run_down_s.clear();
  for (const QString& run : entered.run_down) check.run_down_s.push_back(runTyped(run).value());
  check.note = plain(entered.note);
  check.second = inspection::nameOf(plain(entered.second));
  check.action.clear();
  check.tagged_out.reset();
  check.corrective.reset();
  if (check.result == Result::Pass) return;
  check.action = plain(entered.action);
  if (const std::string by = inspection::nameOf(plain(entered.tagged_by)); !by.empty())
    check.tagged_out = inspection::TagOut{by, inspection::parseDate(plain(entered.tagged_until))};
  if (const std::string todo = plain(entered.todo); !todo.empty())
    check.corrective = inspection::Corrective{todo, inspection::nameOf(plain(entered.owner)),
                                              inspection::parseDate(plain(entered.until))};
}

Entered enteredOf(const inspection::Check& check) {
  Entered entered;
  for (const Tried test : inspection::kTried)
    if (const auto was = inspection::testedFor(check, test)) entered.tested.emplace_back(test, *was);
  for (const double run_s : check.run_down_s) entered.run_down << runText(run_s);
  entered.note = QString::fromStdString(check.note);
  entered.second = QString::fromStdString(check.second);
  entered.action = QString::fromStdString(check.action);
  if (const auto& tag = check.tagged_out) {
    entered.tagged_by = QString::fromStdString(tag->by);
    if (tag->until) entered.tagged_until = QString::fromStdString(inspection::dateText(*tag->until));
  }
  if (!check.corrective) return entered;
  entered.todo = QString::fromStdString(check.corrective->what);
  entered.owner = QString::fromStdString(check.corrective->owner);
  if (check.corrective->due)
    entered.until = QString::fromStdString(inspection::dateText(*check.corrective->due));
  return entered;
}

QByteArray asText(const Entered& entered) {
  QJsonObject object, tested;
  for (const auto& [test, yes] : entered.tested) tested[QLatin1String(word(test).data())] = yes;
  if (!tested.isEmpty()) object["tested"] = tested;
  if (entered.result) object["result"] = QLatin1String(word(*entered.result).data());
  if (!entered.run_down.isEmpty()) object["run_down_s"] = QJsonArray::fromStringList(entered.run_down);
  eachText(entered, [&](const char* name, const QString& text) {
    if (!text.isEmpty()) object[QLatin1String(name)] = text;
  });
  return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

Entered enteredIn(const QByteArray& text) {
  const QJsonObject object = QJsonDocument::fromJson(text).object();
  Entered entered;
  const QJsonObject tested = object["tested"].toObject();
  for (const Tried test : inspection::kTried)
    if (const QJsonValue said = tested[QLatin1String(word(test).data())]; said.isBool())
      entered.tested.emplace_back(test, said.toBool());
  entered.result = inspection::resultOf(object["result"].toString().toStdString());
  for (const QJsonValue& run : object["run_down_s"].toArray())
    if (const QString typed = run.isDouble() ? runText(run.toDouble()) : run.toString(); !typed.isEmpty())
      entered.run_down << typed;
  eachText(entered, [&](const char* name, QString& to) { to = object[QLatin1String(name)].toString(); });
  return entered;
}

}  // namespace stopwalk::rounds

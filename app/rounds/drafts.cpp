#include "app/rounds/drafts.h"

#include <QCoreApplication>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStringList>

#include "app/rounds/words.h"
#include "core/files/sha256.h"

namespace stopwalk::rounds {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::Drafts)
};

const QLatin1String kGroup("inspect/drafts");

// A name of its own for each card, whatever stands in paths and ids.
QString nameOf(const CardKey& key) {
  const std::string all = key.records_file + "\n" + std::to_string(key.round) + "\n" + key.begun + "\n" +
                          key.device + "\n" + std::to_string(key.corrects);
  return kGroup + "/" + QString::fromStdString(files::sha256(all)).left(32);
}

Draft draftIn(const QByteArray& text) {
  const QJsonObject object = QJsonDocument::fromJson(text).object();
  return {enteredIn(text),
          {object["typed_by"].toString(), inspection::parseDate(object["typed_on"].toString().toStdString()),
           object["visit"].toString(), static_cast<std::size_t>(object["known"].toInteger())}};
}

QByteArray asText(const Draft& draft) {
  QJsonObject object = QJsonDocument::fromJson(asText(draft.entered)).object();
  object["typed_by"] = draft.typed.by;
  if (draft.typed.on) object["typed_on"] = QString::fromStdString(inspection::dateText(*draft.typed.on));
  object["visit"] = draft.typed.visit;
  object["known"] = static_cast<qint64>(draft.typed.known);
  return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

QStringList foundIn(const Entered& entered) {
  QStringList found;
  if (entered.result) found << wordOf(*entered.result).toLower();
  for (const auto& [test, yes] : entered.tested)
    found << (yes ? wordOf(test) : Words::tr("not so: %1").arg(wordOf(test)));
  for (const QString& run : entered.run_down) {
    const auto run_s = runTyped(run);
    found << (run_s ? secondsText(*run_s) : run);
  }
  if (!entered.second.isEmpty()) found << Words::tr("second person %1").arg(entered.second);
  return found;
}

}  // namespace

bool mayBeOf(const Typed& typed, const QString& inspector, inspection::Date today, const QString& visit) {
  if (typed.on != today) return false;
  if (typed.by.isEmpty()) return typed.visit == visit;
  return inspector.isEmpty() || inspector.compare(typed.by, Qt::CaseInsensitive) == 0;
}

QString notRecordedText(const Draft& draft) {
  const Typed& typed = draft.typed;
  const QString day = typed.on ? dayText(*typed.on) : Words::tr("an earlier day");
  const QString entered = typed.by.isEmpty()
                              ? Words::tr("Entered on %1 without a name, not recorded").arg(day)
                              : Words::tr("Entered on %1 by %2, not recorded").arg(day, typed.by);
  const QStringList found = foundIn(draft.entered);
  if (found.isEmpty()) return Words::tr("%1: what stands in the lines below.").arg(entered);
  return Words::tr("%1: %2. What you try and find yourself is to be chosen; the lines below stay.")
      .arg(entered, found.join(Words::tr(", ")));
}

Entered linesOf(const Entered& entered) {
  Entered lines = entered;
  lines.tested.clear();
  lines.result.reset();
  lines.run_down.clear();
  lines.second.clear();
  return lines;
}

std::optional<Draft> Drafts::read(const CardKey& key) const {
  const QByteArray text = settings_.value(nameOf(key)).toByteArray();
  if (text.isEmpty()) return std::nullopt;
  return draftIn(text);
}

void Drafts::keep(const CardKey& key, const Draft& draft) {
  if (draft.entered == Entered())
    settings_.remove(nameOf(key));
  else
    settings_.setValue(nameOf(key), asText(draft));
}

void Drafts::forget(const CardKey& key) {
  settings_.remove(nameOf(key));
}

void Drafts::forgetBefore(inspection::Date day) {
  settings_.beginGroup(kGroup);
  for (const QString& name : settings_.childKeys())
    if (const auto on = draftIn(settings_.value(name).toByteArray()).typed.on; on && *on < day)
      settings_.remove(name);
  settings_.endGroup();
}

}  // namespace stopwalk::rounds

#include "app/rounds/on_paper.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <QRegularExpression>

#include "app/records/local_time.h"
#include "app/rounds/words.h"

namespace stopwalk::rounds {
namespace {

constexpr int kSecondsAMinute = 60, kMinutesAnHour = 60;
constexpr qsizetype kToMinute = 16;  // characters: 2026-03-02T09:15

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::OnPaper)
};

QString asTyped(const inspection::Moment& moment) {
  return QString::fromStdString(inspection::momentText(moment));
}

QString expected(bool time_alone) {
  return time_alone ? Words::tr("a time as 09:15, or with its day as 2026-03-02 09:15, is expected")
                    : Words::tr("a day and a time are expected as 2026-03-02 09:15");
}

OnPaper read(const QString& line, const QString& text, bool time_alone) {
  const auto typed = records::momentsTyped(text.toStdString());
  if (!typed) return {{}, Words::tr("%1 %2: %3.").arg(line, text, expected(time_alone))};
  if (typed->size() == 1) return {typed->front(), {}};
  if (typed->empty())
    return {{},
            Words::tr("The clocks here were put forward over that time: type it with its zone, as +01:00.")};
  return {{},
          Words::tr("The clocks here showed that time twice: type it as %1 or as %2.")
              .arg(asTyped(typed->front()), asTyped(typed->back()))};
}

}  // namespace

QString withDay(const QString& typed, const inspection::Round& round) {
  static const QRegularExpression time("^(?:([01]?[0-9]|2[0-3]):|((?!19|20)[01][0-9]|2[1-3]))([0-5][0-9])$");
  const auto found = time.match(typed.simplified());
  if (!round.entered || !found.hasMatch()) return typed;
  const int hour = (found.captured(1) + found.captured(2)).toInt(), minute = found.captured(3).toInt();
  inspection::Moment at = round.at;
  at.second = kSecondsAMinute * (kMinutesAnHour * hour + minute);
  if (typedFor(round.at).size() > kToMinute) return asTyped(at);
  return asTyped(at).left(kToMinute).replace('T', ' ');
}

OnPaper onPaper(const QLineEdit& line, const inspection::Round* round, const inspection::Moment& now) {
  const QString name = line.accessibleName();
  const QString text = (round ? withDay(line.text(), *round) : line.text()).simplified();
  if (text.isEmpty()) return {};
  const OnPaper found = read(name, text, round && round->entered);
  if (!found.at) return found;
  if (instantOf(*found.at) > instantOf(now))
    return {{}, Words::tr("%1 %2: that is still to come.").arg(name, text)};
  if (round && instantOf(*found.at) < instantOf(round->at))
    return {{},
            Words::tr("That is before the round was begun, %1. A round that was walked on paper earlier is "
                      "started with its own day and time.")
                .arg(rounds::momentText(round->at))};
  return found;
}

QString typedFor(const inspection::Moment& moment) {
  const QString whole = asTyped(moment);
  const QString typed = whole.left(kToMinute).replace('T', ' ');
  const auto read = records::momentsTyped(typed.toStdString());
  return read && read->size() == 1 && read->front() == moment ? typed : whole;
}

QString shortText(const QString& typed) {
  const auto read = records::momentsTyped(typed.simplified().toStdString());
  return read && read->size() == 1 ? shortMomentText(read->front()) : typed.simplified();
}

}  // namespace stopwalk::rounds

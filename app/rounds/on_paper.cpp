#include "app/rounds/on_paper.h"

#include <QCoreApplication>
#include <QLineEdit>

#include "app/records/local_time.h"
#include "app/rounds/words.h"

namespace stopwalk::rounds {
namespace {

constexpr qsizetype kToMinute = 16;  // characters: 2026-03-02T09:15

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::OnPaper)
};

QString asTyped(const inspection::Moment& moment) {
  return QString::fromStdString(inspection::momentText(moment));
}

OnPaper read(const QString& line, const QString& text) {
  const auto typed = records::momentsTyped(text.toStdString());
  if (!typed)
    return {{}, Words::tr("%1 %2: a day and a time are expected as 2026-03-02 09:15.").arg(line, text)};
  if (typed->size() == 1) return {typed->front(), {}};
  if (typed->empty())
    return {{},
            Words::tr("The clocks here were put forward over that time: type it with its zone, as +01:00.")};
  return {{},
          Words::tr("The clocks here showed that time twice: type it as %1 or as %2.")
              .arg(asTyped(typed->front()), asTyped(typed->back()))};
}

}  // namespace

OnPaper onPaper(const QLineEdit& line, const std::optional<inspection::Moment>& earliest,
                const inspection::Moment& now) {
  const QString name = line.accessibleName(), text = line.text().simplified();
  if (text.isEmpty()) return {};
  const OnPaper found = read(name, text);
  if (!found.at) return found;
  if (instantOf(*found.at) > instantOf(now))
    return {{}, Words::tr("%1 %2: that is still to come.").arg(name, text)};
  if (earliest && instantOf(*found.at) < instantOf(*earliest))
    return {{},
            Words::tr("That is before the round was begun, %1. A round that was walked on paper earlier is "
                      "started with its own day and time.")
                .arg(rounds::momentText(*earliest))};
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

#include "app/rounds/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "app/poster/day.h"
#include "app/poster/round_texts.h"
#include "app/records/local_time.h"
#include "app/records/records_file.h"
#include "core/inspection/person.h"
#include "core/layout/names.h"

namespace stopwalk::rounds {
namespace {

class Words {
  Q_DECLARE_TR_FUNCTIONS(rounds)
};

// The sheet of a round and the card say the same.
QString asOnPaper(const char* english) {
  return QCoreApplication::translate("poster", english);
}

constexpr int kSecondsAMinute = 60, kMinutesAnHour = 60;
constexpr qsizetype kZone = 6;  // characters: +01:00

// Whether the machine has another device of that kind.
bool isOneOfSeveral(const layout::Layout& layout, const std::string& machine, const std::string& device) {
  const auto m = std::ranges::find(layout.machines, machine, &layout::Machine::id);
  if (m == layout.machines.end()) return false;
  const auto d = std::ranges::find(m->devices, device, &layout::Device::id);
  return d != m->devices.end() && std::ranges::count(m->devices, d->kind, &layout::Device::kind) > 1;
}

QString dayText(inspection::Date day, const QString& format) {
  if (day == inspection::kUnreadDay) return Words::tr("a day that cannot be read");
  return QLocale(Words::tr("en", "the language of dates")).toString(poster::dayOf(day), format);
}

QString timeText(const inspection::Moment& moment) {
  const int minutes = moment.second / kSecondsAMinute;
  return QString("%1:%2")
      .arg(minutes / kMinutesAnHour, 2, 10, QChar('0'))
      .arg(minutes % kMinutesAnHour, 2, 10, QChar('0'));
}

// Within a line, as the language writes it: English writes nouns small.
QString kindWithin(const std::string& kind) {
  const QString english = QString::fromStdString(kind), said = asOnPaper(kind.c_str());
  return said == english ? english.toLower() : said;
}

// Of what is not there, its id.
template <class Things>
QString namedAmong(const Things& things, const std::string& id) {
  const auto at = std::ranges::find(things, id, &Things::value_type::id);
  return QString::fromStdString(at == things.end() ? id : layout::nameOf(*at));
}

}  // namespace

QString wordOf(inspection::Result result) {
  switch (result) {
    case inspection::Result::Pass:
      return asOnPaper(poster::texts::kPass);
    case inspection::Result::Fail:
      return asOnPaper(poster::texts::kFail);
    case inspection::Result::NotTested:
      return asOnPaper(poster::texts::kNotTested);
    case inspection::Result::NotAccessible:
      return asOnPaper(poster::texts::kCouldNotReach);
  }
  return {};
}

QString wordOf(inspection::Tried test) {
  switch (test) {
    case inspection::Tried::Seen:
      return asOnPaper(poster::texts::kSeen);
    case inspection::Tried::Clear:
      return asOnPaper(poster::texts::kClear);
    case inspection::Tried::Legible:
      return asOnPaper(poster::texts::kLegible);
    case inspection::Tried::Pressed:
      return asOnPaper(poster::texts::kPressed);
    case inspection::Tried::PressedRunning:
      return asOnPaper(poster::texts::kPressedRunning);
    case inspection::Tried::Latches:
      return asOnPaper(poster::texts::kLatches);
    case inspection::Tried::StaysStoppedReleased:
      return asOnPaper(poster::texts::kStaysReleased);
    case inspection::Tried::StaysStoppedPower:
      return asOnPaper(poster::texts::kStaysPower);
  }
  return {};
}

QString lookWord() {
  return asOnPaper(poster::texts::kSeenNoStop);
}

QString wordOf(inspection::Due::What what) {
  switch (what) {
    case inspection::Due::What::Retest:
      return Words::tr("retest");
    case inspection::Due::What::Pressed:
      return Words::tr("press");
    case inspection::Due::What::Full:
      return Words::tr("full test");
    case inspection::Due::What::Seen:
      return Words::tr("look");
  }
  return {};
}

QString ofKind(const std::string& text) {
  return asOnPaper(text.c_str());
}

QString personTyped(const QString& text) {
  return QString::fromStdString(inspection::nameOf(text.toStdString()));
}

QString howToTry(const QString& how, bool is_stop) {
  if (!is_stop) return asOnPaper(poster::texts::kToLookAt).arg(how);
  return asOnPaper(poster::texts::kToTest).arg(how) + ' ' + asOnPaper(poster::texts::kMustRest);
}

QString secondsText(double seconds) {
  return Words::tr("%1 s").arg(seconds, 0, 'f', 2);
}

QString dayText(inspection::Date day) {
  return dayText(day, Words::tr("d MMM yyyy"));
}

QString momentText(const inspection::Moment& moment) {
  return Words::tr("%1, %2").arg(dayText(moment.date), timeText(moment));
}

QString shortMomentText(const inspection::Moment& moment) {
  const bool of_this_year = moment.date.year() == records::momentNow().date.year();
  const QString day = of_this_year ? dayText(moment.date, Words::tr("d MMM")) : dayText(moment.date);
  QString time = timeText(moment);
  if (std::ranges::count(records::momentsAt(moment.date, moment.second), moment) == 0)
    time += " " + QString::fromStdString(inspection::momentText(moment)).right(kZone);
  return Words::tr("%1, %2").arg(day, time);
}

QString roomName(const layout::Layout& layout, const std::string& id) {
  return namedAmong(layout.rooms, id);
}

QString machineName(const layout::Layout& layout, const std::string& id) {
  return namedAmong(layout.machines, id);
}

QString nameOf(const layout::Layout& layout, const planning::InspectedDevice& device) {
  const QString kind = kindWithin(device.kind);
  const std::size_t slash = device.id.find('/');
  if (slash != std::string::npos)
    return isOneOfSeveral(layout, device.id.substr(0, slash), device.id.substr(slash + 1))
               ? Words::tr("%1: %2 (%3)")
                     .arg(machineName(layout, device.id.substr(0, slash)), kind,
                          QString::fromStdString(device.id.substr(slash + 1)))
               : Words::tr("%1: %2").arg(machineName(layout, device.id.substr(0, slash)), kind);
  return Words::tr("%1 (%2)").arg(ofKind(device.kind), QString::fromStdString(device.id));
}

}  // namespace stopwalk::rounds

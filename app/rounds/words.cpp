#include "app/rounds/words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <algorithm>

namespace stopwalk::rounds {
namespace {

class Words {
  Q_DECLARE_TR_FUNCTIONS(rounds)
};

constexpr int kSecondsAMinute = 60, kMinutesAnHour = 60;

QString named(const std::string& name, const std::string& id) {
  return QString::fromStdString(name.empty() ? id : name);
}

}  // namespace

QString wordOf(inspection::Result result) {
  switch (result) {
    case inspection::Result::Pass:
      return Words::tr("Pass");
    case inspection::Result::Fail:
      return Words::tr("Fail");
    case inspection::Result::NotTested:
      return Words::tr("Not tested");
    case inspection::Result::NotAccessible:
      return Words::tr("Could not reach");
  }
  return {};
}

QString wordOf(inspection::Tried test) {
  switch (test) {
    case inspection::Tried::Seen:
      return Words::tr("Nothing in its way, marking legible");
    case inspection::Tried::Pressed:
      return Words::tr("Pressed, and it works");
    case inspection::Tried::PressedRunning:
      return Words::tr("Pressed running at no load: it stopped");
    case inspection::Tried::Latches:
      return Words::tr("Latches: stays pressed");
    case inspection::Tried::StaysStoppedReleased:
      return Words::tr("Stays stopped when released");
    case inspection::Tried::StaysStoppedPower:
      return Words::tr("Stays stopped when power returns");
  }
  return {};
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

QString secondsText(double seconds) {
  return Words::tr("%1 s").arg(seconds, 0, 'f', 2);
}

QString dayText(inspection::Date day) {
  const QDate date(int(day.year()), static_cast<int>(unsigned(day.month())),
                   static_cast<int>(unsigned(day.day())));
  return QLocale(Words::tr("en", "the language of dates")).toString(date, Words::tr("d MMM yyyy"));
}

QString momentText(const inspection::Moment& moment) {
  const int minutes = moment.second / kSecondsAMinute;
  return Words::tr("%1, %2").arg(dayText(moment.date), QString("%1:%2")
                                                           .arg(minutes / kMinutesAnHour, 2, 10, QChar('0'))
                                                           .arg(minutes % kMinutesAnHour, 2, 10, QChar('0')));
}

QString roomName(const layout::Layout& layout, const std::string& id) {
  const auto at = std::ranges::find(layout.rooms, id, &layout::Room::id);
  return named(at == layout.rooms.end() ? "" : at->name, id);
}

QString machineName(const layout::Layout& layout, const std::string& id) {
  const auto at = std::ranges::find(layout.machines, id, &layout::Machine::id);
  return named(at == layout.machines.end() ? "" : at->name, id);
}

QString nameOf(const layout::Layout& layout, const planning::InspectedDevice& device) {
  const QString kind = QString::fromStdString(device.kind);
  const std::size_t slash = device.id.find('/');
  if (slash != std::string::npos)
    return Words::tr("%1: %2").arg(machineName(layout, device.id.substr(0, slash)), kind.toLower());
  return Words::tr("%1 (%2)").arg(kind, QString::fromStdString(device.id));
}

}  // namespace stopwalk::rounds

#include "app/panels/things/station_words.h"

#include <QCoreApplication>

namespace stopwalk::panels {

namespace {

class Words {
  Q_DECLARE_TR_FUNCTIONS(StationWords)

 public:
  static QString stop(const audit::Nearest& stop, layout::LengthUnit unit) {
    const QString name = stop.name.empty() ? tr("its stop") : QString::fromStdString(stop.name);
    const QString walk = stop.walk_m ? walkText(*stop.walk_m, unit) : QString();
    switch (stop.status) {
      case audit::Status::AtHand:
        return tr("%1 at hand").arg(name);
      case audit::Status::Walk:
        return tr("walk %1 to %2").arg(walk, name);
      case audit::Status::Narrow:
        return tr("walk %1 to %2 through a narrow place").arg(walk, name);
      case audit::Status::Unreachable:
        return tr("no way to a stop");
      case audit::Status::None:
        return tr("no stop");
      case audit::Status::Unmeasured:
        return tr("not measured");
    }
    return {};
  }

  static QString verdict(audit::Verdict verdict) {
    switch (verdict) {
      case audit::Verdict::Meets:
        return tr("meets");
      case audit::Verdict::Warns:
        return tr("warns");
      case audit::Verdict::Fails:
        return tr("fails");
    }
    return {};
  }

  static QString verdict(audit::Verdict verdict, bool accepted) {
    return accepted ? tr("%1, accepted").arg(Words::verdict(verdict)) : Words::verdict(verdict);
  }

  static QString whole(const audit::StationReport& station, bool accepted, layout::LengthUnit unit) {
    return tr("%1, %2").arg(stop(station.stop, unit), verdict(station.verdict, accepted));
  }
};

}  // namespace

QString verdictWord(audit::Verdict verdict, bool accepted) {
  return Words::verdict(verdict, accepted);
}

QString stationWords(const audit::StationReport& station, bool accepted, layout::LengthUnit unit) {
  return Words::whole(station, accepted, unit);
}

}  // namespace stopwalk::panels

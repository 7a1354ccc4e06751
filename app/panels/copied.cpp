#include "app/panels/copied.h"

#include <QCoreApplication>
#include <QDate>

namespace stopwalk::panels {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Copied)
};

}  // namespace

QString copiedHead(const audit::Report& report) {
  const QString name = report.layout_name.empty() ? Words::tr("A workshop without a name")
                                                  : QString::fromStdString(report.layout_name);
  return Words::tr("%1, audited by the profile %2, copied on %3.")
      .arg(name, QString::fromStdString(report.profile), QDate::currentDate().toString(Qt::ISODate));
}

QString copiedCaution() {
  return Words::tr("A drawing held against chosen rules; this certifies nothing.");
}

}  // namespace stopwalk::panels

#pragma once

#include <QFile>

#include "app/edits/add_things.h"
#include "app/panels/stations/station_table.h"
#include "app/window/audit_place.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {

// Somebody who audits a saved sample.
class InTheAuditPlace : public AtTheWindow {
 protected:
  InTheAuditPlace() {
    QFile::copy(":/sample-layouts/tram-depot.layout.yaml", path);
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
    window->openPath(path);
    window->goToPlace(WorkPlace::Audit);
    window->show();
    EXPECT_TRUE(settled());
    plan().fit();
  }
  bool settled() {
    return QTest::qWaitFor([&] { return !stateOf("table-saw/operator").isEmpty(); }, 10000) &&
           (QTest::qWait(400), true);
  }
  QString stateOf(const QString& station) { return cellOf(station, panels::StationModel::State); }
  QString cellOf(const QString& station, panels::StationModel::Column column) {
    const auto* model = window->auditPlace().stations().view()->model();
    for (int row = 0; row < model->rowCount(); ++row)
      if (model->index(row, 0).data(panels::StationModel::kIdRole).toString() == station)
        return model->index(row, column).data().toString();
    return "";
  }
  bool becomes(const QString& station, const QString& state) {
    return QTest::qWaitFor([&] { return stateOf(station) == state; }, 10000);
  }
  QByteArray bytes() {
    QFile file(path);
    return file.open(QFile::ReadOnly) ? file.readAll() : QByteArray();
  }

  const QString path = pathOf("shop.layout.yaml");
};

}  // namespace stopwalk::window

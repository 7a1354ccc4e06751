// A bench dragged into an aisle turns the stations whose ways it closes and no other, and undo turns them
// back.
#include <map>
#include <set>

#include "app/panels/findings/finding_list.h"
#include "app/panels/stations/station_model.h"
#include "app/window/profile_for.h"
#include "core/audit/audit.h"
#include "tests/app/window/auditing.h"

namespace stopwalk::window {
namespace {

using panels::StationModel;
using Rows = std::map<std::string, QStringList>;  // what stands in the table, by the station's id
using Ids = std::set<std::string>;

Rows rowsOf(const QAbstractItemModel& model) {
  Rows rows;
  for (int row = 0; row < model.rowCount(); ++row) {
    QStringList& cells = rows[model.index(row, 0).data(StationModel::kIdRole).toString().toStdString()];
    for (int column = 0; column < StationModel::kColumns; ++column)
      cells << model.index(row, column).data().toString();
  }
  return rows;
}

class DraggedIntoAnAisle : public InTheAuditPlace {
 protected:
  Rows rows() { return rowsOf(*window->auditPlace().stations().view()->model()); }
  // By an audit that knows nothing of the layout before.
  Rows rowsFromNothing() {
    const auto& kinds = window->document().catalogue().kinds;
    const audit::Profile profile =
        audit::withHouseRules(profileFor(layout(), path).profile, layout().house_rules);
    StationModel model;
    model.setReport(std::make_shared<const audit::Report>(audit::audit(layout(), kinds, profile)), layout(),
                    kinds, {});
    return rowsOf(model);
  }
  bool becomesRight() {
    return QTest::qWaitFor([&] { return rows() == rowsFromNothing(); }, 10000);
  }
  // The glue-up table.
  void dragTheTable(geometry::Point by) {
    const geometry::Point at = *edits::placeOf(layout(), *edits::findThing(layout(), "bench-glue"));
    drag(at, at + by, Qt::AltModifier);
    ASSERT_TRUE(becomesRight());
  }
  void undo() {
    history().undo();
    EXPECT_TRUE(QTest::qWaitFor([&] { return rows() == before; }, 10000));
    EXPECT_TRUE(QTest::qWaitFor([&] { return findings() == found; }, 10000));
  }
  Ids otherIn(std::initializer_list<StationModel::Column> columns) {
    Ids other;
    for (const auto& [id, cells] : rows())
      for (const int column : columns)
        if (cells[column] != before.at(id)[column]) other.insert(id);
    return other;
  }
  QString findings() { return window->auditPlace().findings().asText(); }

  const Rows before = rows();
  const QString found = findings();
};

// By the plan: the table stands across the way between the saw and the jointer. The jointer's helper has to
// go round, and is then nearer to the cut-off, 8 m away; the saw's helper goes round the other end of the
// saw; who turns at the first wood lathe walks straight where the table was.
TEST_F(DraggedIntoAnAisle, TheStationsWhoseWayToTheStopIsClosedTurnAndNoOther) {
  ASSERT_EQ(before, rowsFromNothing());
  dragTheTable({-300, -1700});
  EXPECT_EQ(otherIn({StationModel::State}), (Ids{"jointer/helper"}));
  EXPECT_EQ(before.at("jointer/helper")[StationModel::State], "meets");
  EXPECT_EQ(stateOf("jointer/helper"), "fails");
  EXPECT_EQ(otherIn({StationModel::Walk}), (Ids{"jointer/helper", "table-saw/helper"}));
  EXPECT_EQ(otherIn({StationModel::PhoneWalk}),
            (Ids{"jointer/helper", "table-saw/helper", "wood-lathe-1/operator"}));
  undo();
}

// The table stands between the saw, the disc sander and the moulder: who works west of it goes to the other
// phone, and for the disc sander that is too far.
TEST_F(DraggedIntoAnAisle, TheStationsWhoseWayToThePhoneIsClosedTurnAndNoOther) {
  dragTheTable({2750, -3000});
  EXPECT_EQ(otherIn({StationModel::State}), (Ids{"disc-sander/operator"}));
  EXPECT_EQ(stateOf("disc-sander/operator"), "warns");
  EXPECT_EQ(otherIn({StationModel::Walk}), Ids());
  EXPECT_EQ(otherIn({StationModel::PhoneWalk}),
            (Ids{"disc-sander/operator", "jointer/helper", "jointer/operator", "table-saw/operator",
                 "wood-lathe-1/operator"}));
  undo();
}

}  // namespace
}  // namespace stopwalk::window

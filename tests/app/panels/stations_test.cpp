#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QScrollBar>

#include "app/panels/stations/station_table.h"
#include "app/panels/things/station_words.h"
#include "core/audit/audit.h"
#include "core/audit/wording.h"
#include "tests/app/panels/person.h"
#include "tests/app/panels/workshop.h"

namespace stopwalk::panels {
namespace {

class Stations : public testing::Test {
 protected:
  Stations() {
    // A helper who walks, and a third machine that nothing stops.
    layout::Layout layout = smallShop();
    layout::Station helper;
    helper.id = "helper";
    helper.role = layout::Role::Helper;
    helper.at = {2000, 0};
    layout.machines[0].stations.push_back(helper);
    layout::Machine third = layout.machines[1];
    third.id = "saw-3";
    third.name = "Table saw 3";
    third.at = {15500, 4500};
    third.devices.clear();
    layout.machines.push_back(third);
    layout.devices.clear();
    shop.edited.reset(layout);
    report = std::make_shared<const audit::Report>(
        audit::audit(layout, shop.catalogue.kinds, audit::defaultProfile(), floor::Hours::Open));
    table.setReport(report, layout, shop.catalogue.kinds, {});
  }
  QString cell(int row, StationModel::Column column) const {
    return table.view()->model()->index(row, column).data().toString();
  }
  // Of what is copied, without what stands round it.
  QStringList tableLines() const { return table.asText().split('\n').filter("\t"); }
  int rows() const { return table.view()->model()->rowCount(); }

  Workshop shop;
  std::shared_ptr<const audit::Report> report;
  StationTable table{shop.selection};
};

TEST_F(Stations, AreAllThere) {
  EXPECT_EQ(rows(), static_cast<int>(report->stations.size()));
  EXPECT_EQ(rows(), 4);
}

TEST_F(Stations, ThatAreSearchedForStandAtTheTop) {
  audit::Report many = *report;
  for (int i = 0; i < 40; ++i) {
    many.stations.push_back(many.stations[0]);
    many.stations.own(many.stations.size() - 1).id = "copy/" + std::to_string(i);
  }
  table.setReport(std::make_shared<const audit::Report>(many), shop.layout(), shop.catalogue.kinds, {});
  table.resize(600, 200);
  table.show();
  QTest::qWait(50);
  table.view()->scrollToBottom();
  ASSERT_GT(table.view()->verticalScrollBar()->value(), 0);
  table.search()->setText("copy");
  QTest::qWait(50);
  EXPECT_EQ(table.view()->verticalScrollBar()->value(), 0);
}

TEST_F(Stations, SayWhereAllIsAcceptedByWhomWhyAndUntilWhen) {
  audit::Report some = *report;
  for (std::size_t i = 0; i < some.findings.size(); ++i)
    if (some.findings[i].subject == "saw-1/helper")
      some.findings.own(i).accepted = {"the stop is on order", "Ada Example", "2999-12-31"};
  table.setReport(std::make_shared<const audit::Report>(some), shop.layout(), shop.catalogue.kinds, {});
  QStringList accepted;
  for (int row = 0; row < rows(); ++row)
    if (cell(row, StationModel::State).contains("accepted")) accepted << cell(row, StationModel::Name);
  ASSERT_EQ(accepted, QStringList{"Table saw 1, helper"});
  for (int row = 0; row < rows(); ++row) {
    if (cell(row, StationModel::Name) != accepted[0]) continue;
    const QString told =
        table.view()->model()->index(row, StationModel::State).data(Qt::ToolTipRole).toString();
    EXPECT_TRUE(told.contains("Accepted by Ada Example until 2999-12-31: the stop is on order"))
        << told.toStdString();
  }
  EXPECT_TRUE(table.asText().contains("accepted"));
}

TEST_F(Stations, HeadingsAndShortWordsAreReadWholeInEveryLanguage) {
  const QHeaderView* heads = table.view()->horizontalHeader();
  for (int column = 0; column < StationModel::kColumns; ++column) {
    if (table.view()->isColumnHidden(column)) continue;
    EXPECT_GE(heads->sectionSize(column), heads->sectionSizeHint(column)) << column;
  }
  const int words = table.view()->fontMetrics().horizontalAdvance(cell(0, StationModel::ClearWidth));
  EXPECT_GT(heads->sectionSize(StationModel::ClearWidth), words);
}

TEST_F(Stations, OfHowManyTheSearchShowsSome) {
  EXPECT_FALSE(table.asText().contains(" of 4 "));
  table.search()->setText("helper");
  ASSERT_LT(rows(), 4);
  EXPECT_EQ(table.asText().split('\n')[1], QString("%1 of 4 stations.").arg(rows()))
      << table.asText().toStdString();
}

TEST_F(Stations, WhatIsNotKnownSortsLastAndIsNoNumber) {
  table.view()->sortByColumn(StationModel::Walk, Qt::AscendingOrder);
  EXPECT_EQ(cell(0, StationModel::Walk), "at hand");
  EXPECT_EQ(cell(rows() - 1, StationModel::Walk), "none");
  EXPECT_EQ(cell(rows() - 1, StationModel::Seconds), "–");
  EXPECT_EQ(cell(rows() - 1, StationModel::Name), "Table saw 3, operator");
}

TEST_F(Stations, AWidthThatMayBeWiderSaysSo) {
  int wide = 0;
  for (int row = 0; row < rows(); ++row) wide += cell(row, StationModel::ClearWidth) == "0.61 m or more";
  EXPECT_GT(wide, 0);
  auto narrow = std::make_shared<audit::Report>(*report);
  for (std::size_t i = 0; i < narrow->stations.size(); ++i) {
    audit::Nearest& phone = narrow->stations.own(i).phone;
    phone.status = audit::Status::Narrow;
    phone.clear_width_m = 0.592;
  }
  table.setReport(narrow, shop.edited.layout(), shop.catalogue.kinds, {});
  EXPECT_EQ(cell(0, StationModel::ClearWidth), "0.59 m");
  for (std::size_t i = 0; i < narrow->stations.size(); ++i)
    narrow->stations.own(i).phone.clear_width_m = 0.6096;
  table.setReport(narrow, shop.edited.layout(), shop.catalogue.kinds, {});
  EXPECT_EQ(cell(0, StationModel::ClearWidth), "0.6096 m") << "narrower than walks are measured";
}

TEST_F(Stations, AWalkThroughANarrowPlaceSaysSo) {
  auto narrow = std::make_shared<audit::Report>(*report);
  for (std::size_t i = 0; i < narrow->stations.size(); ++i) {
    audit::Nearest& phone = narrow->stations.own(i).phone;
    phone.status = audit::Status::Narrow;
    phone.walk_m = 3.5;
  }
  table.setReport(narrow, shop.edited.layout(), shop.catalogue.kinds, {});
  for (int row = 0; row < rows(); ++row) EXPECT_EQ(cell(row, StationModel::PhoneWalk), "3.50 m, narrow");
  EXPECT_TRUE(table.asText().contains("\t3.50 m, narrow\t")) << "and what is copied of it";
}

TEST_F(Stations, WorstComeFirst) {
  EXPECT_EQ(cell(0, StationModel::State), "fails");
}

TEST_F(Stations, AreSearchedInAllColumns) {
  table.search()->setText("saw-3");
  EXPECT_EQ(rows(), 1);
  table.search()->setText("helper");
  EXPECT_EQ(rows(), 1);
  table.search()->setText("");
  EXPECT_EQ(rows(), 4);
}

TEST_F(Stations, AreCopiedAsATable) {
  const QStringList lines = tableLines();
  ASSERT_EQ(lines.size(), 5);
  EXPECT_TRUE(lines[0].startsWith("Station\tState\tWalk\t")) << lines[0].toStdString();
  for (const QString& line : lines) EXPECT_EQ(line.count('\t'), lines[0].count('\t'));
}

// Whoever finds it in a letter has no window beside it.
TEST_F(Stations, CopiedSayOfWhatByWhatAndWhenAndWhatTheyAreWorth) {
  const QStringList lines = table.asText().trimmed().split('\n');
  EXPECT_EQ(lines.first(),
            QString("%1, audited by the profile %2, copied on %3.")
                .arg(QString::fromStdString(report->layout_name), QString::fromStdString(report->profile),
                     QDate::currentDate().toString(Qt::ISODate)));
  EXPECT_FALSE(report->layout_name.empty());
  EXPECT_EQ(lines.last(), "A drawing held against chosen rules; this certifies nothing.");
}

TEST_F(Stations, PickedHereArePickedOnThePlan) {
  table.view()->selectRow(0);
  ASSERT_EQ(shop.selection.ids().size(), 1u);
  EXPECT_EQ(QString::fromStdString(shop.selection.ids()[0]),
            table.view()->model()->index(0, 0).data(StationModel::kIdRole).toString());
}

TEST_F(Stations, OfAMachinePickedOnThePlanArePickedHere) {
  shop.selection.set("saw-1");
  EXPECT_EQ(table.view()->selectionModel()->selectedRows().size(), 2);
  EXPECT_EQ(shop.selection.ids(), std::vector<std::string>{"saw-1"});  // the plan's choice stays
}

// Somebody reads further down while the plan is changed.
TEST_F(Stations, FoundAnewStayWhereTheyAreScrolledTo) {
  auto many = std::make_shared<audit::Report>(*report);
  for (int i = 0; i < 60; ++i) {
    many->stations.push_back(many->stations[0]);
    many->stations.own(many->stations.size() - 1).id = "copy/" + std::to_string(i);
  }
  table.resize(600, 300);
  bringUp(table);
  table.setReport(many, shop.layout(), shop.catalogue.kinds, {});
  shop.selection.set("saw-1");
  table.view()->verticalScrollBar()->setValue(30);
  ASSERT_EQ(table.view()->verticalScrollBar()->value(), 30);
  table.setReport(many, shop.layout(), shop.catalogue.kinds, {});
  QTest::qWait(20);
  EXPECT_EQ(table.view()->verticalScrollBar()->value(), 30);
  EXPECT_TRUE(table.view()->selectionModel()->hasSelection());
}

TEST_F(Stations, SayHowTheirStopWorks) {
  for (int row = 0; row < rows(); ++row)
    if (cell(row, StationModel::Stop) != "–") {
      EXPECT_GT(cell(row, StationModel::How).size(), 5) << row;
    }
}

TEST_F(Stations, ShowWhatChangesOnlyWhileSomethingIsSupposed) {
  EXPECT_TRUE(table.view()->isColumnHidden(StationModel::Change));
  const std::string id = report->stations[0].id;
  table.setReport(report, shop.layout(), shop.catalogue.kinds,
                  {{id, plan::Turn::Worse, "Table saw 1, operator: stop at hand → 3 m"}});
  EXPECT_FALSE(table.view()->isColumnHidden(StationModel::Change));
  table.view()->sortByColumn(StationModel::Change, Qt::AscendingOrder);
  EXPECT_EQ(cell(0, StationModel::Change), "▼ stop at hand → 3 m");
}

TEST_F(Stations, ShowWhatChangesOfAMachineWithAColonInItsName) {
  layout::Layout layout = shop.layout();
  layout.machines[0].name = "Saw: big";
  const auto named = std::make_shared<const audit::Report>(
      audit::audit(layout, shop.catalogue.kinds, audit::defaultProfile(), floor::Hours::Open));
  audit::Report before = *named;
  before.stations.own(0).stop.status = audit::Status::None;
  table.setReport(named, layout, shop.catalogue.kinds, plan::changesBetween(before, *named));
  table.view()->sortByColumn(StationModel::Change, Qt::AscendingOrder);
  const QString said = cell(0, StationModel::Change);
  const QString last = cell(rows() - 1, StationModel::Change);
  EXPECT_TRUE((said + last).contains("stop none → at hand")) << (said + "|" + last).toStdString();
  EXPECT_FALSE((said + last).contains("big"));
}

TEST_F(Stations, CopiedSayWhatTheyHangOnAndWhetherTheyAreOfAMomentAgo) {
  const QString plain = table.asText();
  table.setCircumstances({"2 rules are off"}, "What if it is after hours?");
  QStringList with = plain.split('\n');
  with.insert(1, "What if it is after hours?\n2 rules are off.");
  EXPECT_EQ(table.asText(), with.join('\n'));
  table.setAge(Age::MomentAgo);
  EXPECT_TRUE(table.isMomentAgo());
  EXPECT_TRUE(table.asText().startsWith("Of a moment ago"));
  EXPECT_NE(table.view()->palette().color(QPalette::Text), table.palette().color(QPalette::Text));
  table.setAge(Age::Current);
  table.setCircumstances({}, {});
  EXPECT_EQ(table.asText(), plain);
}

TEST_F(Stations, CopiedKeepTheirColumnsWhateverIsWrittenInACell) {
  layout::Layout layout = shop.layout();
  layout.machines[0].name = "Saw\tone\nand more";
  table.setReport(std::make_shared<const audit::Report>(audit::audit(
                      layout, shop.catalogue.kinds, audit::defaultProfile(), floor::Hours::Open)),
                  layout, shop.catalogue.kinds, {});
  const QStringList lines = tableLines();
  ASSERT_EQ(lines.size(), rows() + 1);
  for (const QString& line : lines) EXPECT_EQ(line.count('\t'), lines.front().count('\t'));
}

TEST_F(Stations, WalkInFeetAsFindingsAndRoutesHaveThem) {
  EXPECT_EQ(walkText(4.4498, layout::LengthUnit::Foot).toStdString(),
            audit::lengthText(4.4498, layout::LengthUnit::Foot));
}

}  // namespace
}  // namespace stopwalk::panels

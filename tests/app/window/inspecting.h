#pragma once

#include <QFile>
#include <QTreeWidget>
#include <functional>

#include "app/records/append_record.h"
#include "app/records/records_file.h"
#include "app/rounds/check_card.h"
#include "app/rounds/device_history.h"
#include "app/rounds/due_page.h"
#include "app/rounds/start_form.h"
#include "app/rounds/what_was_tried.h"
#include "app/window/inspect_place.h"
#include "app/window/records_beside.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {

// Somebody who inspects the devices of a saved sample.
class Inspecting : public AtTheWindow {
 protected:
  Inspecting() {
    QFile::copy(":/sample-layouts/tram-depot.layout.yaml", path);
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
  }
  ~Inspecting() override {
    if (window) becomes([&] { return !place().isWriting(); });
  }

  void openAndCome() {
    window->openPath(path);
    come();
  }
  void come() {
    key(Qt::Key_3, Qt::AltModifier);
    EXPECT_EQ(window->workPlace(), WorkPlace::Inspect);
    EXPECT_TRUE(becomes(
        [&] { return !window->records().isReading() && place().due().tree()->topLevelItemCount() > 0; }));
  }
  // As if the program were closed and started anew.
  void again() {
    EXPECT_TRUE(window->close());
    window.reset();
    open();
    openAndCome();
  }
  bool becomes(const std::function<bool()>& holds) { return QTest::qWaitFor(holds, 10000); }
  InspectPlace& place() { return window->inspectPlace(); }
  rounds::CheckCard& card() { return place().card(); }
  rounds::RoundUnderWay& round() { return place().round(); }
  QString inspector() { return "Ada Example"; }

  // By keyboard; `over`: the key of the choice.
  void startRound(Qt::Key over = Qt::Key_2) {
    key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
    type(inspector());
    key(Qt::Key_Tab);
    key(over);
    key(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return round().round().has_value(); })) << place().start().told().toStdString();
  }
  // By keyboard; the name is asked for, whoever began it.
  void goOnWithRound(const QString& by = "Ada Example") {
    key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(round().round().has_value());
    EXPECT_TRUE(card().inspector()->text().isEmpty());
    signAs(by);
  }
  void signAs(const QString& by) {
    typeInto(card().inspector(), by);
    card().setFocus();
  }
  // As its list of checks asks for it.
  void correct(const inspection::Check& check) {
    place().history().correctWanted(check.number, check.device);
  }
  // Waits until it is written, or told why not.
  void enter() {
    key(Qt::Key_Return);
    EXPECT_TRUE(becomes([&] { return !place().isWriting(); }));
    settle();
  }
  // By the Tab key alone, as one without a mouse.
  void tabTo(QWidget* widget) {
    for (int i = 0; i < 80 && QApplication::focusWidget() != widget; ++i) key(Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), widget);
  }
  void typeInto(QLineEdit* line, const QString& text) {
    tabTo(line);
    type(text);
  }
  // As if another program wrote: nothing of this window knows.
  void recordElsewhere(const std::string& device, inspection::Result result) {
    inspection::Check check;
    check.round = onDisk().rounds.back().number;
    check.device = device;
    check.machines = {device.substr(0, device.find('/'))};
    check.at = records::momentNow();
    check.inspector = "Grace Example";
    check.result = result;
    check.layout = onDisk().rounds.back().layout;
    ASSERT_EQ(records::appendRecord(file, check).written, records::Written::Yes);
  }
  inspection::Records onDisk() { return records::readRecords(path.toStdString()).log.records; }

  const QString path = pathOf("shop.layout.yaml");
  const std::string file = records::recordsFileOf(path.toStdString());
};

}  // namespace stopwalk::window

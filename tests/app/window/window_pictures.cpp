// For someone to look at, and for docs/: window_pictures FOLDER. Every screen, light and dark.
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QMouseEvent>
#include <QStyle>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <cstdio>
#include <sstream>

#include "app/command_line/run.h"
#include "app/panels/actions/action_finder.h"
#include "app/panels/findings/accept_dialog.h"
#include "app/panels/findings/finding_list.h"
#include "app/panels/poster/wall_chooser.h"
#include "app/panels/reach/reach_chooser.h"
#include "app/panels/rules/rules_panel.h"
#include "app/plan/plan_view.h"
#include "app/rounds/check_card.h"
#include "app/rounds/device_history.h"
#include "app/rounds/due_page.h"
#include "app/rounds/run_down_timer.h"
#include "app/rounds/start_form.h"
#include "app/window/audit_place.h"
#include "app/window/inspect_place.h"
#include "app/window/main_window.h"
#include "app/window/poster/page_view.h"
#include "app/window/poster/poster_place.h"
#include "app/window/poster/wall_view.h"
#include "app/window/recovery_dialog.h"
#include "app/window/tick_style.h"
#include "core/files/layout_writer.h"
#include "tests/app/window/terminal_picture.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::window {
namespace {

constexpr QSize kSize{1280, 800};

QPalette darkPalette() {
  QPalette dark(QColor(0x2B3036));
  dark.setColor(QPalette::Base, QColor(0x1F2328));
  dark.setColor(QPalette::AlternateBase, QColor(0x262B31));
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText})
    dark.setColor(role, QColor(0xE8EBEE));
  dark.setColor(QPalette::Link, QColor(0x56B4E9));
  dark.setColor(QPalette::PlaceholderText, QColor(0xA6AFB8));
  dark.setColor(QPalette::Highlight, QColor(0x56B4E9));
  dark.setColor(QPalette::HighlightedText, QColor(0x15181C));
  return dark;
}

class Pictures {
 public:
  Pictures(QDir folder, QString ending) : folder_(std::move(folder)), ending_(std::move(ending)) {}

  void take(QWidget& widget, const QString& name) {
    QTest::qWait(400);  // the audit has answered
    const QString path = folder_.filePath(name + ending_ + ".png");
    if (!widget.grab().save(path)) std::fprintf(stderr, "cannot write %s\n", qPrintable(path));
  }

 private:
  QDir folder_;
  QString ending_;
};

// As it drops down; a menu is a window of its own.
void takeMenu(Pictures& pictures, MainWindow& window, const QString& title) {
  for (const QAction* action : window.menuBar()->actions()) {
    if (action->text().remove('&') != title) continue;
    action->menu()->popup(window.mapToGlobal(QPoint(0, 0)));
    pictures.take(*action->menu(), "audit-menu");
    action->menu()->close();
  }
}

// The rules, one of them chosen, and what is asked of whoever accepts a finding.
void takeRules(Pictures& pictures, MainWindow& window) {
  AuditPlace& place = window.auditPlace();
  place.tabs().setCurrentWidget(&place.rules());
  place.rules().choose("stop-too-far");
  pictures.take(window, "audit-rules");
  place.tabs().setCurrentIndex(0);
  QTreeWidget& findings = *place.findings().tree();
  findings.setCurrentItem(findings.topLevelItem(0)->child(0));
  panels::AcceptDialog dialog({window.document().edited(), window.selection(), window.document().catalogue()},
                              *place.findings().current(), {}, &window);
  dialog.reason()->line()->setText("The stop is on order; nobody works here alone until then");
  dialog.by()->line()->setText("Ada Example");
  dialog.until()->line()->setText("2027-05-31");
  dialog.resize(520, 300);
  dialog.show();
  pictures.take(dialog, "audit-accept");
}

// An invented campus, as the command line sums it up.
void takeCampus(const QDir& folder) {
  QTemporaryDir campus;
  QDir::setCurrent(campus.path());
  const QStringList shops = {"north/art", "north/print", "south/boats", "south/metal", "south/wood", "props"};
  for (int i = 0; i < shops.size(); ++i) {
    const QString path = "campus/" + shops[i] + ".layout.yaml";
    QDir().mkpath(QFileInfo(path).path());
    QFile file(path);
    const QString sample = FileFlow::samples()[i % FileFlow::samples().size()];
    if (i < FileFlow::samples().size())
      QFile::copy(":/sample-layouts/" + sample, path);
    else if (file.open(QFile::WriteOnly) && i % 2 == 1)
      file.write("stopwalk_layout: 1\nunits: mm\n");
    else
      file.write(QByteArray::fromStdString(files::writeLayout(support::shopLayout(support::kShopSizes[1]))));
  }
  for (const int columns : {80, 120}) {
    std::istringstream in;
    std::ostringstream out, err;
    app::run({"audit", "campus", "--format", "summary"},
             app::Console{in, out, err, true, false, static_cast<std::size_t>(columns)});
    const QString path = folder.filePath("campus-%1.png");
    terminalPicture("stopwalk audit campus --format summary", out.str(), columns).save(path.arg(columns));
  }
  QDir::setCurrent(folder.path());
}

void takePosters(Pictures& pictures, MainWindow& window) {
  window.goToPlace(WorkPlace::Poster);
  PosterPlace& place = window.posterPlace();
  const auto painted = [&] { return place.isCurrent() && place.page().isPainted(); };
  if (!QTest::qWaitFor(painted, 20000)) std::fprintf(stderr, "the poster is not painted\n");
  pictures.take(window, "poster");
  place.wall().button()->click();
  QTest::qWait(50);
  QTest::keyClick(&place.walls(), Qt::Key_Right);
  pictures.take(window, "poster-wall");
  place.leave();
}

// With the button down, what is dragged and what it changes.
void takeDrag(Pictures& pictures, MainWindow& window, geometry::Point from, geometry::Point to) {
  plan::PlanView& plan = window.plan();
  const auto at = [&](geometry::Point mm) { return plan.transform().toPixels(mm); };
  const auto send = [&](QEvent::Type type, geometry::Point mm, Qt::MouseButton button) {
    QMouseEvent event(type, at(mm), plan.mapToGlobal(at(mm)), button, Qt::LeftButton, Qt::AltModifier);
    QApplication::sendEvent(&plan, &event);
  };
  send(QEvent::MouseButtonPress, from, Qt::LeftButton);
  for (int step = 1; step <= 10; ++step)
    send(QEvent::MouseMove, from + (step / 10.0) * (to - from), Qt::NoButton);
  if (!QTest::qWaitFor([&] { return plan.isAudited(); }, 20000))
    std::fprintf(stderr, "no audit of the drag\n");
  pictures.take(window, "audit-drag");
  QTest::keyClick(&plan, Qt::Key_Escape);
  QTest::mouseRelease(&plan, Qt::LeftButton, {}, at(to).toPoint());
}

// The card of a round that was walked on paper.
void takePaper(Pictures& pictures, MainWindow& window) {
  InspectPlace& place = window.inspectPlace();
  place.card().leaveButton()->click();
  place.due().startButton()->click();
  place.start().name()->setText("Ada Example");
  place.start().onPaper()->setText("2026-03-02 09:15");
  place.start().startButton()->click();
  const auto walks = [&] { return place.round().round().has_value(); };
  if (!QTest::qWaitFor(walks, 10000)) std::fprintf(stderr, "the round on paper was not started\n");
  QTest::keyClicks(&place.card(), "12456p");
  place.card().timer().show({"2.41", "2,52"});
  place.card().onPaper()->setText("2026-03-02 09:20");
  pictures.take(window, "inspect-paper");
}

// Of a layout that is saved, with a round over what is due.
void takeInspection(Pictures& pictures, MainWindow& window, const QString& path) {
  QFile::copy(":/sample-layouts/tram-depot.layout.yaml", path);
  QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
  window.openPath(path);
  window.goToPlace(WorkPlace::Inspect);
  InspectPlace& place = window.inspectPlace();
  QTest::qWait(400);
  pictures.take(window, "inspect-due");
  place.due().startButton()->click();
  place.start().name()->setText("Ada Example");
  pictures.take(window, "inspect-start");
  place.start().startButton()->click();
  const auto walks = [&] { return place.round().round().has_value(); };
  if (!QTest::qWaitFor(walks, 10000)) std::fprintf(stderr, "the round was not started\n");
  rounds::CheckCard& card = place.card();
  const auto settled = [&] { return !place.isWriting(); };
  for (const char* keys : {"123p", "r", "n", "1234567p"}) {
    QTest::keyClicks(&card, keys);
    QTest::keyClick(&card, Qt::Key_Return);
    if (!QTest::qWaitFor(settled, 10000)) std::fprintf(stderr, "a check was not written\n");
    QTest::qWait(20);
  }
  pictures.take(window, "inspect-card");
  QTest::keyClicks(&card, "12456p");
  card.timer().show({"2.41", "2.52", "2.38"});
  pictures.take(window, "inspect-ticked");
  QTest::keyClicks(&card, "f");
  pictures.take(window, "inspect-fail");
  const auto record = [&] {
    QTest::keyClick(&card, Qt::Key_Return);
    if (!QTest::qWaitFor(settled, 10000)) std::fprintf(stderr, "a check was not written\n");
  };
  record();
  QTest::keyClick(&card, Qt::Key_PageUp, Qt::ControlModifier);
  QTest::keyClicks(&card, "12356p");
  card.timer().show({"2.31", "2.36"});
  card.note()->setText("Latch replaced");
  record();
  QTest::keyClick(&card, Qt::Key_PageUp, Qt::ControlModifier);
  QTest::keyClicks(&card, "h");
  pictures.take(window, "inspect-checks");
  place.history().correctButton()->click();
  pictures.take(window, "inspect-correct");
  QTest::keyClick(&card, Qt::Key_Escape);
  place.round().leave();
  window.selection().clear();
  window.plan().fit();
  pictures.take(window, "inspect-plan");
  place.due().continueButton()->click();
  takePaper(pictures, window);
}

void takeAll(Pictures& pictures) {
  QTemporaryDir home;
  QSettings settings(home.filePath("settings.ini"), QSettings::IniFormat);
  documents::RecoveryStore store(home.filePath("state"));
  MainWindow window(store, settings);
  window.resize(kSize);
  window.show();
  pictures.take(window, "first-minutes");

  window.files().openSample("tram-depot.layout.yaml");
  pictures.take(window, "draw");
  window.selection().set("table-saw");
  pictures.take(window, "draw-machine");
  window.selection().clear();
  window.plan().choose({plan::Choice::What::Room});
  QTest::mouseMove(&window.plan(), {300, 560});
  QTest::mouseClick(&window.plan(), Qt::LeftButton, {}, {300, 560});
  QTest::mouseMove(&window.plan(), {420, 640});
  pictures.take(window, "draw-room");
  window.plan().choose({});

  if (auto* tabs = window.findChild<QTabWidget*>("drawing")) tabs->setCurrentIndex(1);
  pictures.take(window, "draw-things");

  window.goToPlace(WorkPlace::Audit);
  window.selection().clear();
  QTest::qWait(400);
  auto& findings = window.auditPlace().findings();
  findings.tree()->setFocus();
  findings.tree()->setCurrentItem(findings.tree()->topLevelItem(0)->child(0));
  pictures.take(window, "audit");
  window.selection().clear();
  window.plan().fit();
  takeDrag(pictures, window, {3100, 11200}, {5200, 10400});
  takeMenu(pictures, window, "Audit");
  takeRules(pictures, window);
  planning::Suppositions what_if;
  what_if.out_of_order = {"table-saw/paddle", "phone-bikes"};
  what_if.hours = floor::Hours::After;
  layout::Fixture pallet;
  pallet.id = "in-the-way-1";
  pallet.at = {6600, 7000};
  pallet.footprint = layout::Rectangle{1200, 800};
  what_if.in_the_way = {pallet};
  window.auditPlace().tabs().setCurrentIndex(1);
  window.suppose(what_if);
  pictures.take(window, "audit-what-if");
  window.suppose({});
  window.auditPlace().reach().whatBox()->setCurrentIndex(1);
  window.auditPlace().tabs().setCurrentIndex(0);
  window.selection().clear();
  QTest::qWait(200);
  window.plan().fit();
  pictures.take(window, "audit-reach");
  window.auditPlace().reach().whatBox()->setCurrentIndex(0);
  takePosters(pictures, window);
  takeInspection(pictures, window, home.filePath("shop.layout.yaml"));
  window.goToPlace(WorkPlace::Draw);

  panels::ActionFinder finder(&window);
  finder.resize(480, 420);
  pictures.take(finder, "find-an-action");

  documents::Found found;
  found.layout = window.document().edited().layout();
  found.stored = QDateTime(QDate(2026, 3, 2), QTime(9, 15));
  RecoveryDialog recovery(found, window.document().catalogue().kinds);
  recovery.resize(760, 420);
  pictures.take(recovery, "recovery");
}

}  // namespace
}  // namespace stopwalk::window

int main(int argc, char** argv) {
  if (argc != 2) return std::fprintf(stderr, "usage: window_pictures FOLDER\n"), 2;
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  QApplication::setStyle(new stopwalk::window::TickStyle("Fusion"));
  QDir().mkpath(argv[1]);
  stopwalk::window::Pictures light(QDir(argv[1]), "");
  takeAll(light);
  QApplication::setPalette(stopwalk::window::darkPalette());
  stopwalk::window::Pictures dark(QDir(argv[1]), "-dark");
  takeAll(dark);
  stopwalk::window::takeCampus(QDir(QDir(argv[1]).absolutePath()));
  return 0;
}

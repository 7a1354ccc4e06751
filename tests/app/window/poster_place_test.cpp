// Posters at the window: the page follows the choices and the layout, and goes out as it is shown.
#include "app/window/poster/poster_place.h"

#include <QFile>
#include <QImage>
#include <QListWidget>
#include <QProcess>
#include <QPushButton>

#include "app/documents/layout_file.h"
#include "app/panels/poster/paper_chooser.h"
#include "app/panels/poster/room_chooser.h"
#include "app/panels/poster/wall_chooser.h"
#include "app/poster/room_walls.h"
#include "app/poster/words.h"
#include "app/records/append_record.h"
#include "app/records/records_file.h"
#include "app/window/records_beside.h"
#include "app/window/poster/page_view.h"
#include "app/window/poster/wall_view.h"
#include "tests/app/panels/accessible.h"
#include "tests/app/window/files.h"

namespace stopwalk::window {
namespace {

// Every letter of a document's pages.
QString lettersOf(const poster::Document& document) {
  QStringList lines;
  for (const poster::Page& page : document.pages)
    for (const poster::Mark& mark : page.marks)
      if (const auto* text = std::get_if<poster::Text>(&mark)) lines << text->text;
  return lines.join('\n');
}

// As an independent program reads it.
QString textOfPdf(const QString& path) {
  QProcess reader;
  reader.start("pdftotext", {"-layout", path, "-"});
  EXPECT_TRUE(reader.waitForFinished(30000)) << "pdftotext of poppler-utils is needed";
  EXPECT_EQ(reader.exitCode(), 0) << reader.readAllStandardError().toStdString();
  return QString::fromUtf8(reader.readAllStandardOutput());
}

class InThePosterPlace : public Files {
 protected:
  InThePosterPlace() {
    QFile::copy(":/sample-layouts/tram-depot.layout.yaml", path);
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
    window->openPath(path);
    key(Qt::Key_4, Qt::AltModifier);
    EXPECT_TRUE(ready());
  }

  PosterPlace& place() { return window->posterPlace(); }
  bool ready() {
    return QTest::qWaitFor(
        [&] { return place().isCurrent() && (!place().page().document() || place().page().isPainted()); },
        30000);
  }
  QString page() {
    EXPECT_TRUE(ready());
    return place().page().document() ? lettersOf(*place().page().document()) : QString();
  }
  QStringList shortfalls() {
    EXPECT_TRUE(ready());
    return rowsOf(place().shortfalls());
  }
  static QStringList rowsOf(const QListWidget* list) {
    QStringList rows;
    for (int row = 0; row < list->count(); ++row) rows << list->item(row)->text();
    return rows;
  }
  // Down the list by the keyboard until a row begins so.
  void pick(QListWidget* list, const QString& beginning) {
    list->setFocus();
    key(Qt::Key_Home);
    for (int row = 0; row < list->count() && !list->currentItem()->text().startsWith(beginning); ++row)
      key(Qt::Key_Down);
    ASSERT_TRUE(list->currentItem()->text().startsWith(beginning)) << beginning.toStdString();
  }
  void choosePaper(const QString& beginning) {
    QComboBox* box = place().paper().paper()->box();
    box->setFocus();
    key(Qt::Key_Home);
    for (int i = 0; i < box->count() && !box->currentText().startsWith(beginning); ++i) key(Qt::Key_Down);
    ASSERT_TRUE(box->currentText().startsWith(beginning));
  }
  void press(const QString& button) {
    for (auto* b : place().under()->findChildren<QPushButton*>())
      if (b->text() == button) return QTest::mouseClick(b, Qt::LeftButton);
    FAIL() << "no button " << button.toStdString();
  }
  QString hash() { return QString::fromStdString(window->document().fileHash()); }

  const QString path = pathOf("shop.layout.yaml");
};

TEST_F(InThePosterPlace, ThePageIsThatOfTheRoomChosen) {
  EXPECT_EQ(rowsOf(place().room().list()).size(), 4) << "rooms indoors";
  EXPECT_TRUE(page().contains("Car hall"));
  EXPECT_TRUE(page().contains(hash().left(12))) << "the file is as it is here";
  pick(place().room().list(), "Wood room");
  EXPECT_TRUE(page().contains("Wood room"));
  EXPECT_TRUE(page().contains("Table saw"));
  EXPECT_EQ(place().page().document()->title(), "STOP LOCATIONS: Wood room");
}

TEST_F(InThePosterPlace, ARoomWithNothingToShowSaysWhy) {
  window->goToPlace(WorkPlace::Draw);
  choose({plan::Choice::What::Room});
  typeNumbers({"50 m", "0", "8 m", "6 m"});
  window->goToPlace(WorkPlace::Poster);
  EXPECT_TRUE(ready());
  const QStringList rows = rowsOf(place().room().list());
  EXPECT_TRUE(rows.last().contains("there is no machine and no stop in it")) << rows.last().toStdString();
  pick(place().room().list(), rows.last());
  EXPECT_EQ(page(), "");
  EXPECT_TRUE(place().page().sentence().contains("there is no machine and no stop in it"));
  press("Save as PDF…");
  EXPECT_TRUE(asker.asked.contains("Save the layout first?"));
}

TEST_F(InThePosterPlace, AWallIsPickedByAClickOnThePlan) {
  const poster::Document before = *place().page().document();
  QTest::mouseClick(place().wall().button(), Qt::LeftButton);
  WallView& walls = place().walls();
  ASSERT_TRUE(walls.isVisible());
  const auto all = poster::roomWalls(layout(), 0);
  ASSERT_EQ(all.size(), 4u);
  const geometry::Point at = geometry::at(all[2].line, 0.3);
  const QPoint pixel = walls.transform().toPixels(at).toPoint();
  QTest::mouseMove(&walls, pixel);
  settle();
  EXPECT_EQ(window->sentence(), "Wall 3 of 4, 14 m, with the door to Wood room");
  QTest::mouseClick(&walls, Qt::LeftButton, {}, pixel);
  EXPECT_FALSE(walls.isVisible()) << "the page is back";
  EXPECT_FALSE(place().wall().button()->isChecked());
  EXPECT_TRUE(place().wall().list()->currentItem()->text().startsWith("Wall 3 of 4"));
  ASSERT_TRUE(place().wall().place());
  EXPECT_LT(geometry::distance(*place().wall().place(), at), 2 / walls.transform().pixelsPerMm());
  // What the reader faces is another wall: the drawing is turned, and so the way to the phone is another.
  EXPECT_NE(page(), lettersOf(before));
}

TEST_F(InThePosterPlace, AWallIsPickedFromTheListAndRememberedForItsRoom) {
  const QString usual = page();
  pick(place().wall().list(), "Wall 3 of 4");
  const QString hung = page();
  EXPECT_NE(hung, usual);
  pick(place().room().list(), "Wood room");
  EXPECT_TRUE(place().wall().list()->currentItem()->text().startsWith("Where most wall is free"));
  EXPECT_TRUE(ready());
  pick(place().room().list(), "Car hall");
  EXPECT_TRUE(place().wall().list()->currentItem()->text().startsWith("Wall 3 of 4"));
  EXPECT_EQ(page(), hung);
  pick(place().wall().list(), "Where most wall is free");
  EXPECT_EQ(page(), usual);
}

TEST_F(InThePosterPlace, AWallIsPickedOnThePlanByTheKeyboard) {
  key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
  ASSERT_TRUE(place().walls().hasFocus());
  key(Qt::Key_Left);
  key(Qt::Key_Left);
  key(Qt::Key_Return);
  EXPECT_TRUE(place().wall().list()->currentItem()->text().startsWith("Wall 4 of 4"));
  key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
  key(Qt::Key_Escape);
  EXPECT_FALSE(place().walls().isVisible());
  EXPECT_TRUE(place().wall().list()->currentItem()->text().startsWith("Wall 4 of 4"));
}

TEST_F(InThePosterPlace, PaperAndLanguagesAreTakenAndRemembered) {
  choosePaper("A2");
  EXPECT_TRUE(ready());
  EXPECT_EQ(place().page().document()->pages[0].size, QSizeF(420, 594)) << "as fits best";
  auto* turn = place().paper().turn()->box();
  turn->setFocus();
  key(Qt::Key_Down);
  EXPECT_TRUE(ready());
  EXPECT_EQ(place().page().document()->pages[0].size, QSizeF(594, 420));
  auto* also = place().paper().also()->box();
  also->setFocus();
  key(Qt::Key_End);
  EXPECT_TRUE(page().contains("In an emergency"));
  EXPECT_TRUE(page().simplified().contains(poster::Language("de").say("In an emergency")));
  const panels::PaperChoice choice = place().paper().choice();
  EXPECT_EQ(choice.paper, "a2");
  EXPECT_EQ(choice.turn, "lying");
  EXPECT_EQ(choice.also, "de");
  window.reset();
  open();
  EXPECT_EQ(place().paper().choice(), choice) << "as other choices of the view";
}

TEST_F(InThePosterPlace, WhatThePaperCannotDoIsSaidWithThePaperThatWould) {
  layout::Layout large = layout();
  for (geometry::Point& corner : large.rooms[0].outline)
    corner = large.rooms[0].outline[0] + 5.0 * (corner - large.rooms[0].outline[0]);
  window->document().edited().apply({"Five times as large", large});
  choosePaper("A4");
  EXPECT_EQ(page(), "");
  const QString said = shortfalls().join('\n');
  EXPECT_TRUE(said.contains("does not fit on A4")) << said.toStdString();
  EXPECT_TRUE(said.contains("A2 would do") || said.contains("A3 would do")) << said.toStdString();
}

TEST_F(InThePosterPlace, TheSavedPdfHoldsWhatThePageShows) {
  asker.file = pathOf("hall.pdf");
  press("Save as PDF…");
  EXPECT_EQ(asker.asked, QStringList());
  EXPECT_TRUE(asker.suggested.endsWith("shop-hall.pdf")) << asker.suggested.toStdString();
  const QString text = textOfPdf(pathOf("hall.pdf"));
  EXPECT_TRUE(text.contains("STOP LOCATIONS"));
  EXPECT_TRUE(text.contains("Car hall"));
  EXPECT_TRUE(text.contains("Layout " + hash().left(12))) << text.toStdString();
  for (const QString& line : page().split('\n'))
    EXPECT_TRUE(text.simplified().contains(line.section(' ', 0, 0))) << line.toStdString();
  EXPECT_TRUE(window->sentence().contains("hall.pdf"));
}

TEST_F(InThePosterPlace, APosterTakesThePlaceOfNothingThatTheLayoutIsMadeWith) {
  QImage scan(40, 30, QImage::Format_RGB32);
  scan.fill(Qt::white);
  ASSERT_TRUE(scan.save(pathOf("scan.png")));
  layout::Layout drawn = layout();
  drawn.underlay = layout::Underlay{};
  drawn.underlay->image = "scan.png";
  drawn.underlay->mm_per_pixel = 100;
  window->document().edited().apply({"Put a picture under the plan", drawn});
  ASSERT_TRUE(window->files().save());
  ASSERT_TRUE(ready());
  ASSERT_TRUE(QFile::link(pathOf("scan.png"), pathOf("link.png")));
  for (const char* name : {"scan.png", "link.png"}) {
    asker.file = pathOf(name);
    press("Save as picture (PNG)…");
    EXPECT_EQ(asker.asked.last(), QString("%1 was not written").arg(name));
    EXPECT_TRUE(asker.said.last().contains("is made with this file")) << asker.said.last().toStdString();
    EXPECT_EQ(QImage(pathOf("scan.png")).size(), QSize(40, 30));
  }
  asker.file = pathOf("hall.yaml");
  press("Save as picture (PNG)…");
  EXPECT_FALSE(QFile::exists(pathOf("hall.yaml"))) << "as no export";
}

TEST_F(InThePosterPlace, APictureAndADrawingAreSaved) {
  asker.file = pathOf("hall.png");
  press("Save as picture (PNG)…");
  EXPECT_GT(QImage(pathOf("hall.png")).width(), 1000);
  asker.file = pathOf("hall.svg");
  press("Save as drawing (SVG)…");
  QFile svg(pathOf("hall.svg"));
  ASSERT_TRUE(svg.open(QFile::ReadOnly));
  EXPECT_TRUE(svg.readAll().contains("STOP LOCATIONS"));
}

TEST_F(InThePosterPlace, AllRoomsGoIntoOnePdf) {
  asker.file = pathOf("all.pdf");
  press("Save posters of all rooms…");
  const QString text = textOfPdf(pathOf("all.pdf"));
  for (const char* room : {"Car hall", "Wood room", "Bicycle bay", "Smithy"})
    EXPECT_TRUE(text.contains(room)) << room;
}

TEST_F(InThePosterPlace, ItIsPrintedWhole) {
  asker.file = pathOf("printed.pdf");
  press("Print…");
  const QString text = textOfPdf(pathOf("printed.pdf"));
  EXPECT_TRUE(text.contains("STOP LOCATIONS"));
  EXPECT_TRUE(window->sentence().contains("100 mm"));
  press("Print…");  // and called off
  EXPECT_EQ(asker.asked, QStringList());
}

TEST_F(InThePosterPlace, AnUnsavedLayoutIsMarkedAndOffersToBeSavedFirst) {
  const QString before = hash();
  window->goToPlace(WorkPlace::Draw);
  addAPhone();
  window->goToPlace(WorkPlace::Poster);
  EXPECT_TRUE(page().contains("NOT SAVED"));
  EXPECT_FALSE(page().contains(before.left(12)));
  EXPECT_TRUE(shortfalls().join('\n').contains("NOT SAVED"));

  press("Save as PDF…");  // and closed
  EXPECT_EQ(asker.asked, QStringList("Save the layout first?"));
  asker.file = pathOf("draft.pdf");
  asker.answers = {"Go on, marked NOT SAVED"};
  press("Save as PDF…");
  EXPECT_TRUE(textOfPdf(pathOf("draft.pdf")).contains("Layout NOT SAVED"));
  EXPECT_FALSE(window->document().isSaved());

  asker.file = pathOf("true.pdf");
  asker.answers = {"Save the layout first"};
  press("Save as PDF…");
  EXPECT_TRUE(window->document().isSaved());
  EXPECT_NE(hash(), before);
  EXPECT_TRUE(textOfPdf(pathOf("true.pdf")).contains("Layout " + hash().left(12)));
  EXPECT_EQ(hash().toStdString(), documents::openLayout(path).sha256);
  EXPECT_TRUE(page().contains(hash().left(12))) << "and so says the page";
}

TEST_F(InThePosterPlace, ThePageFollowsUndo) {
  EXPECT_TRUE(page().contains("Belt sander"));
  window->goToPlace(WorkPlace::Draw);
  window->selection().set("linisher");
  plan().setFocus();
  key(Qt::Key_Delete);
  window->goToPlace(WorkPlace::Poster);
  EXPECT_FALSE(page().contains("Belt sander"));
  history().undo();
  EXPECT_FALSE(place().isCurrent()) << "what is not yet made anew says so";
  EXPECT_TRUE(page().contains("Belt sander"));
  EXPECT_TRUE(page().contains(hash().left(12)));
}

TEST_F(InThePosterPlace, AWriteProtectedFileStaysAsItIs) {
  const QString old = pathOf("hall.pdf");
  put(old, "the old poster");
  QFile::setPermissions(old, QFile::ReadOwner);
  asker.file = old;
  press("Save as PDF…");
  EXPECT_EQ(asker.asked, QStringList("hall.pdf was not written"));
  EXPECT_NE(asker.said.last(), "") << "it says why";
  EXPECT_EQ(textOf(old), "the old poster");
}

TEST_F(InThePosterPlace, TheLayoutItselfIsNeverWrittenOver) {
  const QByteArray before = textOf(path);
  asker.file = path;
  press("Save as PDF…");
  EXPECT_EQ(asker.asked, QStringList("That is the layout itself"));
  EXPECT_EQ(textOf(path), before);
}

TEST_F(InThePosterPlace, DrawingToolsLeadBackToThePlan) {
  key(Qt::Key_2, Qt::ControlModifier);
  EXPECT_EQ(window->workPlace(), WorkPlace::Draw);
  EXPECT_TRUE(plan().isVisible());
}

TEST_F(InThePosterPlace, NothingUnseenIsRemoved) {
  window->goToPlace(WorkPlace::Draw);
  window->selection().set("linisher");
  window->goToPlace(WorkPlace::Poster);
  place().room().list()->setFocus();
  key(Qt::Key_Delete);
  EXPECT_TRUE(edits::findThing(layout(), "linisher"));
}

TEST_F(InThePosterPlace, ThePageIsZoomedAsThePlanIs) {
  const double whole = place().page().transform().pixelsPerMm();
  place().page().setFocus();
  key(Qt::Key_Plus, Qt::ControlModifier);
  EXPECT_GT(place().page().transform().pixelsPerMm(), whole);
  EXPECT_TRUE(ready());
  key(Qt::Key_0);
  EXPECT_DOUBLE_EQ(place().page().transform().pixelsPerMm(), whole);
}

TEST_F(InThePosterPlace, EveryControlHasAName) {
  EXPECT_EQ(panels::namelessControls(*window), QStringList());
}

TEST_F(InThePosterPlace, TabGoesThroughTheChoicesInTheOrderOfTheWork) {
  const QList<QWidget*> order{place().room().list(),         place().wall().button(),
                              place().wall().list(),         place().paper().paper()->box(),
                              place().paper().turn()->box(), place().paper().language()->box(),
                              place().paper().also()->box(), place().paper().letters()->box()};
  order.front()->setFocus();
  for (qsizetype i = 1; i < order.size(); ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), order[i]) << i;
  }
  EXPECT_LT(window->minimumSizeHint().width(), 1280);
}

TEST_F(AtTheWindow, APlanWithoutRoomsHasNoPosterAndSaysSo) {
  window->goToPlace(WorkPlace::Poster);
  PosterPlace& place = window->posterPlace();
  EXPECT_TRUE(QTest::qWaitFor([&] { return place.isCurrent() && !place.page().sentence().isEmpty(); }));
  EXPECT_TRUE(place.page().sentence().contains("no room indoors"));
  asker.answers = {"Go on, marked NOT SAVED"};
  place.files().save(PosterFiles::As::Pdf, PosterFiles::Rooms::All);
  EXPECT_EQ(asker.asked.last(), "There is no poster");
}

// It would mislead from the first day on the wall.
TEST_F(InThePosterPlace, AStopThatFailsWhileANameIsChosenIsOnTheSavedPoster) {
  asker.meanwhile = [&] {
    inspection::Round round;
    round.at = records::momentNow();
    round.by = "Ada Example";
    round.of = "all";
    round.devices = {"cnc-mill/panel"};
    round.layout.sha256 = hash().toStdString();
    const std::string log = records::recordsFileOf(path.toStdString());
    ASSERT_EQ(records::appendRecord(log, round).written, records::Written::Yes);
    inspection::Check check;
    check.round = 1;
    check.device = round.devices.front();
    check.machines = {"cnc-mill"};
    check.at = round.at;
    check.inspector = "Ada Example";
    check.result = inspection::Result::Fail;
    check.layout = round.layout;
    ASSERT_EQ(records::appendRecord(log, check).written, records::Written::Yes);
  };
  asker.file = pathOf("hall.pdf");
  press("Save as PDF…");
  const QString text = textOfPdf(pathOf("hall.pdf"));
  EXPECT_TRUE(text.contains("Out of order")) << text.toStdString();
}

}  // namespace
}  // namespace stopwalk::window

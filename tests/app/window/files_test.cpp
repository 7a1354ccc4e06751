// Opening, saving and leaving: nothing is lost without an answer.
#include "tests/app/window/files.h"

#include "app/documents/layout_file.h"
#include "app/edits/change_things.h"
#include "app/panels/details/details.h"
#include "app/window/notice_bar.h"

namespace stopwalk::window {
namespace {

TEST_F(Files, ClosingWithUnsavedWorkAsksAndStays) {
  drawARoom();
  EXPECT_FALSE(window->close());
  EXPECT_EQ(asker.asked.size(), 1);
  asker.answers = {"Keep working"};
  EXPECT_FALSE(window->close());
  asker.answers = {"Do not save"};
  EXPECT_TRUE(window->close());
}

TEST_F(Files, ClosingAfterSavingAsksNothing) {
  saved("shed.layout.yaml");
  EXPECT_FALSE(window->isWindowModified());
  EXPECT_TRUE(window->close());
  EXPECT_EQ(asker.asked, QStringList());
}

TEST_F(Files, UndoingToWhatWasSavedIsSaved) {
  saved("shed.layout.yaml");
  choose({plan::Choice::What::Phone});
  typeNumbers({"0", "1000"});
  EXPECT_TRUE(window->isWindowModified());
  history().undo();
  EXPECT_FALSE(window->isWindowModified());
}

TEST_F(Files, AWriteProtectedFileIsNotReplacedButSavedUnderAnotherName) {
  const QString path = saved("shed.layout.yaml");
  const QByteArray before = textOf(path);
  QFile::setPermissions(path, QFile::ReadOwner | QFile::ReadGroup);
  choose({plan::Choice::What::Phone});
  typeNumbers({"0", "1000"});
  asker.asked.clear();
  asker.answers = {"Keep working"};
  EXPECT_FALSE(window->files().save());
  ASSERT_EQ(asker.asked.size(), 1);
  EXPECT_TRUE(asker.asked[0].contains("write-protected"));
  EXPECT_TRUE(window->isWindowModified());
  EXPECT_EQ(textOf(path), before);
  asker.answers = {"Save under another name"};
  asker.file = pathOf("other.layout.yaml");
  EXPECT_TRUE(window->files().save());
  EXPECT_EQ(textOf(path), before);
  EXPECT_NE(textOf(pathOf("other.layout.yaml")), before);
}

TEST_F(Files, ASecondWindowIsToldWhoHasTheLayout) {
  const QString path = saved("shed.layout.yaml");
  documents::RecoveryStore other_store(folder.filePath("other-state"));
  ToldAsker other_asker;
  other_asker.answers = {"Open for looking only"};
  MainWindow other(other_store, settings, &other_asker);
  other.openPath(path);
  ASSERT_EQ(other_asker.asked.size(), 1);
  EXPECT_TRUE(other_asker.asked[0].contains("open elsewhere"));
  EXPECT_TRUE(other.document().isReadOnly());
  EXPECT_EQ(other.document().edited().layout().rooms.size(), 1u);
  EXPECT_TRUE(other.notices().text().contains("look only"));
}

TEST_F(Files, WhatIsOpenForLookingOnlyIsNeverWrittenToItsOwnPath) {
  const QString path = saved("shed.layout.yaml");
  window->files().startNew();
  isTakenElsewhere(path);
  asker.answers = {"Open for looking only"};
  window->openPath(path);
  ASSERT_TRUE(window->document().isReadOnly());
  const QByteArray before = textOf(path), lock = textOf(path + ".lock");
  window->document().edited().apply(
      edits::changeSite(layout(), "name", [](layout::Site& site) { site.name = "Changed here"; }));

  asker.asked.clear();
  asker.answers = {"Keep working"};
  asker.file = path;
  EXPECT_FALSE(window->files().save());
  EXPECT_TRUE(asker.suggested.endsWith("/shed-copy.layout.yaml")) << asker.suggested.toStdString();
  ASSERT_EQ(asker.asked.size(), 1);
  EXPECT_TRUE(asker.asked[0].contains("for looking only"));
  EXPECT_EQ(textOf(path), before);
  EXPECT_EQ(textOf(path + ".lock"), lock);

  asker.file = asker.suggested;
  EXPECT_TRUE(window->files().save());
  EXPECT_FALSE(window->document().isReadOnly());
  EXPECT_EQ(window->document().name(), "shed-copy.layout.yaml");
  EXPECT_TRUE(isOurs(pathOf("shed-copy.layout.yaml")));
  EXPECT_EQ(textOf(path), before);
}

TEST_F(Files, ALayoutThatIsTakenOverOnOpeningIsOurs) {
  const QString path = saved("shed.layout.yaml");
  window->files().startNew();
  EXPECT_FALSE(QFile::exists(path + ".lock"));
  isTakenElsewhere(path);
  asker.answers = {"Take it over"};
  window->openPath(path);
  EXPECT_FALSE(window->document().isReadOnly());
  EXPECT_TRUE(isOurs(path));
  addAPhone();
  EXPECT_TRUE(window->files().save());
}

TEST_F(Files, ALayoutThatWasTakenFromUsIsNotSavedOverUnasked) {
  const QString path = saved("shed.layout.yaml");
  const QByteArray before = textOf(path);
  addAPhone();
  isTakenElsewhere(path);
  asker.answers = {"Keep working"};
  EXPECT_FALSE(window->files().save());
  ASSERT_EQ(asker.asked.size(), 1);
  EXPECT_TRUE(asker.asked[0].contains("taken over")) << asker.asked[0].toStdString();
  EXPECT_EQ(textOf(path), before);
  EXPECT_FALSE(window->document().isSaved());

  asker.answers = {"Take it over"};
  EXPECT_TRUE(window->files().save());
  EXPECT_NE(textOf(path), before);
  EXPECT_TRUE(isOurs(path));
}

TEST_F(Files, SavingOntoALayoutThatSomebodyWorksOnAsksFirst) {
  const QString own = saved("shed.layout.yaml");
  const QString theirs = pathOf("theirs.layout.yaml");
  ASSERT_TRUE(QFile::copy(own, theirs));
  isTakenElsewhere(theirs);
  addAPhone();
  const QByteArray before = textOf(theirs);
  asker.file = theirs;
  asker.answers = {"Keep working"};
  EXPECT_FALSE(window->files().saveAs());
  ASSERT_EQ(asker.asked.size(), 1);
  EXPECT_TRUE(asker.asked[0].contains("open elsewhere"));
  EXPECT_EQ(textOf(theirs), before);
  EXPECT_EQ(window->document().path(), own);
  EXPECT_TRUE(isOurs(own));
  expectNothingLost();

  asker.file = theirs;
  asker.answers = {"Take it over", "Replace what is there"};
  EXPECT_TRUE(window->files().saveAs());
  EXPECT_TRUE(isOurs(theirs));
  EXPECT_FALSE(QFile::exists(own + ".lock"));
}

TEST_F(Files, ASaveThatFailsLeavesNoLockBehindAndKeepsTheOwnOne) {
  const QString own = saved("shed.layout.yaml");
  addAPhone();
  put(pathOf("photo.layout.yaml"), "not a layout");
  asker.file = pathOf("photo.layout.yaml");
  EXPECT_FALSE(window->files().saveAs());
  EXPECT_FALSE(QFile::exists(pathOf("photo.layout.yaml.lock")));
  EXPECT_TRUE(isOurs(own));
  expectNothingLost();
}

// The three ways in which what was to be opened may not come.
TEST_F(Files, WhatDoesNotOpenCostsNothing) {
  const QString own = saved("shed.layout.yaml");
  const QString theirs = pathOf("theirs.layout.yaml"), broken = pathOf("broken.layout.yaml");
  ASSERT_TRUE(QFile::copy(own, theirs));
  isTakenElsewhere(theirs);
  put(broken, "stopwalk_layout: 1\nunits: ells\n");
  addAPhone();
  const auto before = layout();
  for (const QString& path : {pathOf("none.layout.yaml"), broken, theirs}) {
    asker.answers = {"Do not save", "Do not open it"};
    window->openPath(path);
    EXPECT_EQ(layout(), before);
    EXPECT_EQ(window->document().path(), own);
    EXPECT_TRUE(isOurs(own)) << path.toStdString();
    expectNothingLost();
  }
}

TEST_F(Files, AnUntitledLayoutLeavesNoLockWhenNothingIsOpened) {
  const QDir here;
  const auto files = [&] { return here.entryList({"*.lock"}, QDir::Files | QDir::Hidden); };
  const QStringList before = files();
  const QString path = saved("shed.layout.yaml");
  window->files().startNew();
  isTakenElsewhere(path);
  drawARoom();
  asker.answers = {"Do not save", "Do not open it"};
  window->openPath(path);
  EXPECT_EQ(files(), before);
  expectNothingLost();
}

TEST_F(Files, GoingBackToTheFileBringsItAsItIsNowAndKeepsTheLock) {
  const QString path = saved("shed.layout.yaml");
  addAPhone();
  asker.answers = {"Keep working"};
  window->files().revert();
  EXPECT_EQ(layout().phones.size(), 1u);
  put(path, textOf(path).replace("Room 1", "Their room"));
  asker.answers = {"Go back to the file"};
  window->files().revert();
  EXPECT_TRUE(layout().phones.empty());
  EXPECT_EQ(layout().rooms[0].name, "Their room");
  EXPECT_TRUE(window->document().isSaved());
  EXPECT_TRUE(isOurs(path));
  EXPECT_EQ(keptCopies(), 0);
}

TEST_F(Files, GoingBackToAFileThatIsGoneCostsNothing) {
  const QString path = saved("shed.layout.yaml");
  addAPhone();
  ASSERT_TRUE(QFile::remove(path));
  asker.answers = {"Go back to the file"};
  window->files().revert();
  EXPECT_EQ(layout().phones.size(), 1u);
  EXPECT_TRUE(isOurs(path));
  expectNothingLost();
}

// Whatever leads away from the layout, what is being typed belongs to it.
TEST_F(Files, WhatIsBeingTypedIsAskedAboutBeforeItWouldBeLost) {
  const QString path = saved("shed.layout.yaml");
  const std::vector<std::function<void()>> ways = {
      [&] { window->files().startNew(); }, [&] { window->openPath(path); }, [&] { window->files().revert(); },
      [&] { window->files().openSample(FileFlow::samples().front()); }, [&] { window->close(); }};
  for (const auto& leave : ways) {
    window->selection().set(std::vector<std::string>());
    settle();
    auto* name = window->findChild<panels::Details*>()->findChild<QLineEdit*>();
    ASSERT_TRUE(name);
    name->setFocus();
    name->selectAll();
    type("Shed by the gate");
    EXPECT_TRUE(window->document().isSaved()) << "typed, not entered";
    asker.asked.clear();
    leave();
    EXPECT_EQ(asker.asked.size(), 1);
    EXPECT_EQ(layout().site.name, "Shed by the gate");
    history().undo();
    EXPECT_TRUE(window->document().isSaved());
  }
}

TEST_F(Files, ChangesOfAnotherProgramAreNoticedAndNotWrittenOver) {
  const QString path = saved("shed.layout.yaml");
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadWrite));
  QByteArray text = file.readAll();
  text.replace("Room 1", "Their room");
  file.resize(0);
  file.seek(0);
  file.write(text);
  file.close();
  EXPECT_TRUE(QTest::qWaitFor([&] { return window->notices().text().contains("another program"); }, 15000));

  choose({plan::Choice::What::Phone});
  typeNumbers({"0", "1000"});
  EXPECT_FALSE(window->files().save());
  const auto there = documents::openLayout(path);
  ASSERT_TRUE(there.read.value);
  EXPECT_EQ(there.read.value->rooms[0].name, "Their room");
}

TEST_F(Files, ABrokenFileIsToldWithItsLineAndTheWindowKeepsWhatItHas) {
  drawARoom();
  QFile file(pathOf("broken.layout.yaml"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("stopwalk_layout: 1\nunits: ells\n");
  file.close();
  asker.answers = {"Do not save"};
  window->openPath(file.fileName());
  ASSERT_EQ(asker.asked.size(), 2);
  EXPECT_TRUE(asker.asked[1].contains("could not be opened"));
  EXPECT_EQ(layout().rooms.size(), 1u);
}

TEST_F(Files, SamplesOpenWithoutAFileOfTheirOwn) {
  ASSERT_FALSE(FileFlow::samples().isEmpty());
  for (const QString& sample : FileFlow::samples()) {
    window->files().openSample(sample);
    EXPECT_FALSE(layout().machines.empty()) << sample.toStdString();
    EXPECT_TRUE(window->document().path().isEmpty());
    EXPECT_TRUE(window->document().isSaved());
  }
}

TEST_F(Files, ALayoutOpenedAfterAnotherHasNothingPickedAndNoToolInHand) {
  const QString path = saved("shed.layout.yaml");
  window->selection().set("room-1");
  choose({plan::Choice::What::Phone});
  window->openPath(path);
  EXPECT_TRUE(window->selection().empty());
  EXPECT_EQ(plan().choice().what, plan::Choice::What::Select);
}

TEST_F(Files, TheShopsOwnMachinesAndStopsStandInTheMenus) {
  const auto offers = [&](const QString& text) {
    const auto actions = window->findChildren<QAction*>();
    return std::ranges::any_of(actions, [&](const QAction* a) { return a->text() == text; });
  };
  saved("shed.layout.yaml");
  plan::Catalogue own = plan::bundledCatalogue();
  layout::DeviceKind plate;
  plate.key = "knee-plate";
  plate.label = "Knee plate";
  own.kinds = layout::DeviceKinds({plate});
  own.templates = {};
  const int before = static_cast<int>(window->findChildren<QAction*>().size());
  ASSERT_TRUE(offers("Table saw"));
  window->document().start(Document::emptyLayout(), own);
  EXPECT_TRUE(offers("Knee plate"));
  EXPECT_FALSE(offers("Table saw"));
  window->document().start();
  EXPECT_FALSE(offers("Knee plate"));
  EXPECT_TRUE(offers("Table saw"));
  EXPECT_EQ(window->findChildren<QAction*>().size(), before);
}

TEST(DialogAsker, LeavesANameThatEndsAsYaml) {
  EXPECT_EQ(DialogAsker::withEnding("/shop/shed"), "/shop/shed.layout.yaml");
  for (const QString name : {"shop.yaml", "shop.layout.yaml", "SHOP.YAML"})
    EXPECT_EQ(DialogAsker::withEnding(name), name);
}

TEST_F(Files, WhatAnotherProgramDidToAFileIsNotToldOfTheNextOne) {
  const auto told = [&] { return window->notices().text().contains("another program"); };
  const QString path = saved("shed.layout.yaml");
  put(path, textOf(path).replace("Room 1", "Their room"));
  ASSERT_TRUE(QTest::qWaitFor(told, 15000));
  window->files().openSample(FileFlow::samples().front());
  EXPECT_FALSE(told());
}

// What is printed next names it by this hash.
TEST_F(Files, AFileThatWasWrittenOverAllTheSameIsTheLayoutsOwnAtOnce) {
  const auto told = [&] { return window->notices().text().contains("another program"); };
  const QString path = saved("shed.layout.yaml");
  put(path, textOf(path).replace("Room 1", "Their room"));
  ASSERT_TRUE(QTest::qWaitFor(told, 15000));
  asker.answers = {"Replace what is there"};
  ASSERT_TRUE(window->files().save()) << asker.asked.join(' ').toStdString();
  EXPECT_EQ(window->document().fileHash(), documents::openLayout(path).sha256);
  EXPECT_FALSE(told());
}

}  // namespace
}  // namespace stopwalk::window

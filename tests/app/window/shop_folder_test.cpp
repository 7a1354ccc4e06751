// What lies beside a layout: the shop's own kinds, its profile, the picture under the plan.
#include <QImage>
#include <QPushButton>

#include "app/documents/layout_file.h"
#include "app/edits/add_things.h"
#include "app/edits/change_things.h"
#include "app/panels/rules/rules_panel.h"
#include "app/window/audit_place.h"
#include "app/window/files_beside.h"
#include "app/window/notice_bar.h"
#include "tests/app/documents/folder.h"
#include "tests/app/window/files.h"

namespace stopwalk::window {
namespace {

const QByteArray kKneePad =
    "stopwalk_device_kinds: 1\ndevice_kinds:\n  knee-pad:\n    label: knee pad\n    actuated_by: hand\n"
    "    shape: point\n    counts_as_stop: true\n...\n";
const QByteArray kOurs = "stopwalk_profile: 1\nid: ours\nextends: strict\nrules: {}\n...\n";

class ShopFolder : public Files {
 protected:
  ShopFolder() { EXPECT_TRUE(QDir(folder.path()).mkpath("here") && QDir(folder.path()).mkpath("there")); }
  // Opens a layout in `here`.
  void openHere(const layout::Layout& layout) {
    put(pathOf("here/shed.layout.yaml"), QByteArray::fromStdString(documents::textOf(layout)));
    window->openPath(pathOf("here/shed.layout.yaml"));
    ASSERT_EQ(window->document().path(), pathOf("here/shed.layout.yaml"));
  }
  bool saveThere(const QString& answer) {
    asker.asked.clear();
    asker.said.clear();
    asker.answers = {answer};
    asker.file = pathOf("there/shed.layout.yaml");
    return window->files().saveAs();
  }
  bool isThere() { return QFile::exists(pathOf("there/shed.layout.yaml")); }
};

TEST_F(ShopFolder, WithoutTheKindsThatItNeedsALayoutIsNotSavedThere) {
  put(pathOf("here/device-kinds.yaml"), kKneePad);
  layout::Layout own = documents::workshop("Own kinds");
  layout::Device pad;
  pad.id = "pad-1";
  pad.kind = "knee-pad";
  own.devices.push_back(pad);
  openHere(own);
  EXPECT_FALSE(saveThere("Keep working"));
  ASSERT_EQ(asker.said.size(), 1);
  EXPECT_TRUE(asker.said[0].contains("knee-pad") && asker.said[0].contains("device-kinds.yaml"));
  EXPECT_FALSE(isThere());
  EXPECT_TRUE(isOurs(pathOf("here/shed.layout.yaml")));
  EXPECT_FALSE(QFile::exists(pathOf("there/shed.layout.yaml.lock")));

  put(pathOf("there/device-kinds.yaml"), kKneePad);
  EXPECT_TRUE(saveThere(""));
  EXPECT_EQ(asker.asked, QStringList());
}

TEST_F(ShopFolder, SavingInAnotherFolderBringsItsKinds) {
  openHere(documents::workshop("Bundled kinds"));
  put(pathOf("there/device-kinds.yaml"), kKneePad);
  EXPECT_TRUE(saveThere(""));
  EXPECT_TRUE(window->document().catalogue().kinds.find("knee-pad"));
}

TEST_F(ShopFolder, WhatWouldBeLostFromSightIsAskedAbout) {
  put(pathOf("here/ours.yaml"), kOurs);
  QImage picture(20, 20, QImage::Format_RGB32);
  picture.fill(Qt::white);
  ASSERT_TRUE(picture.save(pathOf("here/plan.png")));
  layout::Layout own = documents::workshop("With a profile");
  own.profile = "ours.yaml";
  own.underlay = layout::Underlay();
  own.underlay->image = "plan.png";
  openHere(own);
  EXPECT_EQ(window->notices().text(), "");
  EXPECT_FALSE(saveThere("Keep working"));
  ASSERT_EQ(asker.said.size(), 1);
  EXPECT_TRUE(asker.said[0].contains("ours.yaml") && asker.said[0].contains("plan.png"));
  EXPECT_FALSE(isThere());

  EXPECT_TRUE(saveThere("Save it there all the same"));
  EXPECT_EQ(asker.asked.size(), 1);
  EXPECT_TRUE(window->notices().text().contains("ours.yaml")) << window->notices().text().toStdString();
}

TEST_F(ShopFolder, AProfileThatCannotBeUsedIsTold) {
  put(pathOf("ours.yaml"), kOurs);
  put(pathOf("here/broken.yaml"), "stopwalk_profile: 1\nid: [\n");
  for (const char* profile : {"strickt", "../ours.yaml", "broken.yaml"}) {
    layout::Layout own = documents::workshop("With a profile");
    own.profile = profile;
    openHere(own);
    const QString text = window->notices().text();
    EXPECT_TRUE(text.contains(profile)) << profile << ": " << text.toStdString();
    EXPECT_TRUE(text.contains("usual profile")) << text.toStdString();
  }
  window->document().edited().apply(edits::Edit{"Profile", [&] {
                                                  layout::Layout l = layout();
                                                  l.profile = "strict";
                                                  return l;
                                                }()});
  EXPECT_EQ(window->notices().text(), "");
}

TEST_F(ShopFolder, KindsThatAreChangedOutsideCountAtOnceAndWhatCannotBeReadLeavesTheOld) {
  const QString kinds = pathOf("here/device-kinds.yaml");
  openHere(documents::workshop("Bundled kinds"));
  put(kinds, kKneePad);
  window->filesBeside().lookNow();
  EXPECT_TRUE(window->document().catalogue().kinds.find("knee-pad"));
  EXPECT_TRUE(window->notices().text().contains("device-kinds.yaml"))
      << window->notices().text().toStdString();
  EXPECT_TRUE(window->notices().text().contains("was read again"));

  put(kinds, "stopwalk_device_kinds: 1\ndevice_kinds: [\n");
  window->filesBeside().lookNow();
  EXPECT_TRUE(window->document().catalogue().kinds.find("knee-pad"));
  EXPECT_TRUE(window->notices().text().contains("stay in use")) << window->notices().text().toStdString();

  ASSERT_TRUE(QFile::remove(kinds));
  window->filesBeside().lookNow();
  EXPECT_TRUE(window->document().catalogue().kinds.find("knee-pad"));
  EXPECT_TRUE(window->notices().text().contains("it is gone")) << window->notices().text().toStdString();

  put(kinds, QByteArray(kKneePad).replace("counts_as_stop: true", "counts_as_stop: false"));
  window->filesBeside().lookNow();
  ASSERT_TRUE(window->document().catalogue().kinds.find("knee-pad"));
  EXPECT_FALSE(window->document().catalogue().kinds.find("knee-pad")->counts_as_stop);
  EXPECT_FALSE(window->notices().text().contains("stay in use")) << window->notices().text().toStdString();
}

TEST_F(ShopFolder, KindsThatTheLayoutNeedsAreNotTakenFromIt) {
  put(pathOf("here/device-kinds.yaml"), kKneePad);
  layout::Layout own = documents::workshop("Own kinds");
  layout::Device pad;
  pad.id = "pad-1";
  pad.kind = "knee-pad";
  own.devices.push_back(pad);
  openHere(own);
  put(pathOf("here/device-kinds.yaml"), QByteArray(kKneePad).replace("knee-pad:", "shin-pad:"));
  window->filesBeside().lookNow();
  EXPECT_TRUE(window->document().catalogue().kinds.find("knee-pad"));
  EXPECT_TRUE(window->notices().text().contains("stay in use")) << window->notices().text().toStdString();
}

TEST_F(ShopFolder, AProfileThatIsChangedOutsideIsReadAgainWithWhatItExtends) {
  put(pathOf("here/base.yaml"), QByteArray(kOurs).replace("id: ours", "id: base"));
  put(pathOf("here/ours.yaml"), QByteArray(kOurs).replace("extends: strict", "extends: base.yaml"));
  layout::Layout own = documents::workshop("With a profile");
  own.profile = "ours.yaml";
  openHere(own);
  ASSERT_EQ(window->notices().text(), "");
  put(pathOf("here/base.yaml"), "stopwalk_profile: 1\nid: [\n");
  window->filesBeside().lookNow();
  EXPECT_TRUE(window->notices().text().contains("stays in use")) << window->notices().text().toStdString();
  EXPECT_TRUE(window->auditPlace().rules().head().contains("stays in use"));

  put(pathOf("here/base.yaml"), QByteArray(kOurs).replace("id: ours", "id: base"));
  put(pathOf("here/ours.yaml"), QByteArray(kOurs).replace("id: ours", "id: ours-anew"));
  window->filesBeside().lookNow();
  EXPECT_TRUE(window->notices().text().contains("was read again")) << window->notices().text().toStdString();
  EXPECT_TRUE(window->auditPlace().rules().head().contains("ours-anew"))
      << window->auditPlace().rules().head().toStdString();
}

TEST_F(ShopFolder, WhatTheReaderNoticedIsShown) {
  QByteArray text = QByteArray::fromStdString(documents::textOf(documents::workshop("Odd keys")));
  text.replace("\nsite:", "\ncolour: red\nshape: round\nsite:");
  put(pathOf("here/odd.layout.yaml"), text);
  window->openPath(pathOf("here/odd.layout.yaml"));
  ASSERT_EQ(layout().site.name, "Odd keys");
  const QString notice = window->notices().text();
  EXPECT_TRUE(notice.contains("odd.layout.yaml") && notice.contains("colour")) << notice.toStdString();
  EXPECT_TRUE(notice.contains("And 1 more")) << notice.toStdString();
  for (auto* button : window->notices().findChildren<QPushButton*>())
    if (button->text() == "Show them all") button->click();
  ASSERT_EQ(asker.said.size(), 1);
  EXPECT_TRUE(asker.said[0].contains("colour") && asker.said[0].contains("shape"));
  window->files().startNew();
  EXPECT_EQ(window->notices().text(), "");
}

}  // namespace
}  // namespace stopwalk::window

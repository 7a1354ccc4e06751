// A profile takes the place of another profile, and of nothing else.
#include <gtest/gtest.h>

#include <QFile>

#include "app/documents/safe_write.h"
#include "tests/app/documents/folder.h"

namespace stopwalk::documents {
namespace {

constexpr const char* kProfile = "stopwalk_profile: 1\nid: ours\n";

class WriteProfile : public testing::Test {
 protected:
  QString put(const QString& name, const QByteArray& text) {
    QFile file(folder.path(name));
    EXPECT_TRUE(file.open(QFile::WriteOnly));
    file.write(text);
    return folder.path(name);
  }
  QByteArray textOf(const QString& path) {
    QFile file(path);
    return file.open(QFile::ReadOnly) ? file.readAll() : QByteArray();
  }
  void expectRefused(const QString& target, const QStringList& read_from = {}) {
    const QByteArray before = textOf(target);
    const bool was_there = QFile::exists(target);
    const WriteResult result = writeProfile(target, kProfile, read_from);
    EXPECT_EQ(result.written, Written::No) << target.toStdString();
    EXPECT_FALSE(result.why.isEmpty());
    EXPECT_EQ(textOf(target), before);
    EXPECT_EQ(QFile::exists(target), was_there);
  }

  Folder folder;
};

TEST_F(WriteProfile, IsThereUnderANewNameAndInThePlaceOfAnother) {
  const QString path = folder.path("ours.yaml");
  EXPECT_EQ(writeProfile(path, "stopwalk_profile: 1\nid: older\n", {}).written, Written::Yes);
  EXPECT_EQ(writeProfile(path, kProfile, {}).written, Written::Yes);
  EXPECT_EQ(textOf(path), kProfile);
}

TEST_F(WriteProfile, TakesThePlaceOfNoLayoutAndNoRecords) {
  const QString layout = put("shop.layout.yaml", "stopwalk_layout: 1\n");
  expectRefused(layout);
  expectRefused(folder.path("new.layout.yaml"));
  expectRefused(put("shop.yaml", "stopwalk_layout: 1\n"));
  expectRefused(put("shop.inspections.jsonl", "{}\n"));
  expectRefused(put("device-kinds.yaml", "stopwalk_device_kinds: 1\n"));
  ASSERT_TRUE(QFile::link(layout, folder.path("link.yaml")));
  expectRefused(folder.path("link.yaml"));
}

TEST_F(WriteProfile, TakesThePlaceOfNothingThatTheLayoutIsMadeWith) {
  const QString used = put("used.yaml", kProfile);
  expectRefused(used, {used});
  expectRefused(folder.path("device-kinds.yaml"),
                {folder.path("device-kinds.yaml")});  // would be read as kinds
}

TEST_F(WriteProfile, LeavesWhatIsWriteProtected) {
  const QString kept = put("kept.yaml", "stopwalk_profile: 1\nid: older\n");
  QFile::setPermissions(kept, QFile::ReadOwner);
  expectRefused(kept);
}

}  // namespace
}  // namespace stopwalk::documents

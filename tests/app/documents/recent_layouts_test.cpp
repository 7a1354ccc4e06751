#include "app/documents/recent_layouts.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>

#include "tests/app/documents/folder.h"

namespace stopwalk::documents {
namespace {

class RecentLayoutsTest : public testing::Test {
 protected:
  QStringList paths() const {
    QStringList all;
    for (const RecentLayout& recent : recent_.list())
      all << QDir(folder_.path()).relativeFilePath(recent.path);
    return all;
  }

  Folder folder_;
  QSettings settings_{folder_.path("settings.ini"), QSettings::IniFormat};
  RecentLayouts recent_{settings_};
};

TEST_F(RecentLayoutsTest, TheNewestIsFirstAndEachStandsOnce) {
  EXPECT_EQ(paths(), QStringList{});
  for (const char* name : {"a", "b", "c", "a"}) recent_.add(folder_.path(name));
  recent_.add(folder_.path("x/../b"));
  EXPECT_EQ(paths(), (QStringList{"b", "a", "c"}));
}

TEST_F(RecentLayoutsTest, MissingOnesAreMarkedAndStay) {
  put(folder_.path("here"), "");
  recent_.add(folder_.path("here"));
  recent_.add(folder_.path("gone"));
  EXPECT_EQ(recent_.list(),
            (std::vector<RecentLayout>{{folder_.path("gone"), true}, {folder_.path("here"), false}}));
}

TEST_F(RecentLayoutsTest, TheOldestIsPushedOut) {
  for (int i = 0; i <= RecentLayouts::kMost; ++i) recent_.add(folder_.path(QString::number(i)));
  EXPECT_EQ(paths().size(), RecentLayouts::kMost);
  EXPECT_EQ(paths().front(), QString::number(RecentLayouts::kMost));
  EXPECT_EQ(paths().back(), "1");
}

TEST_F(RecentLayoutsTest, AreForgottenOnRequest) {
  for (const char* name : {"a", "b"}) recent_.add(folder_.path(name));
  recent_.forget(folder_.path("a"));
  EXPECT_EQ(paths(), QStringList{"b"});
  recent_.forgetAll();
  EXPECT_EQ(paths(), QStringList{});
}

TEST_F(RecentLayoutsTest, AreThereAtTheNextStart) {
  recent_.add(folder_.path("Müller, shop.layout.yaml"));
  QSettings again(folder_.path("settings.ini"), QSettings::IniFormat);
  EXPECT_EQ(RecentLayouts(again).list().front().path, folder_.path("Müller, shop.layout.yaml"));
}

TEST_F(RecentLayoutsTest, AnotherWindowsAreKept) {
  QSettings other_settings(folder_.path("settings.ini"), QSettings::IniFormat);
  RecentLayouts other(other_settings);
  EXPECT_TRUE(other.list().empty());
  recent_.add(folder_.path("a"));
  other.add(folder_.path("b"));
  EXPECT_EQ(paths(), (QStringList{"b", "a"}));
}

}  // namespace
}  // namespace stopwalk::documents

#include "app/panels/gallery/gallery.h"

#include <gtest/gtest.h>

#include "tests/app/panels/person.h"

namespace stopwalk::panels {
namespace {

using What = plan::Choice::What;

class GalleryOfAll : public testing::Test {
 protected:
  GalleryOfAll() : gallery(plan::bundledCatalogue()) {
    bringUp(gallery);
    QObject::connect(&gallery, &Gallery::chosen, [this](const plan::Choice& c) { chosen.push_back(c); });
  }

  QStringList shownOffers() const {
    QStringList texts;
    for (QTreeWidgetItemIterator it(gallery.list(), QTreeWidgetItemIterator::NotHidden); *it; ++it)
      if ((*it)->parent()) texts << (*it)->text(0);
    return texts;
  }

  Gallery gallery;
  std::vector<plan::Choice> chosen;
};

TEST_F(GalleryOfAll, OffersEachTemplateAndEachKindOfDevice) {
  const plan::Catalogue catalogue = plan::bundledCatalogue();
  const QStringList offers = shownOffers();
  for (const auto& t : catalogue.templates.all())
    EXPECT_TRUE(offers.contains(QString::fromStdString(t.label)));
  for (const auto& k : catalogue.kinds.all()) EXPECT_TRUE(offers.contains(QString::fromStdString(k.label)));
}

TEST_F(GalleryOfAll, FindsAMachineByTypingAndChoosesItByEnter) {
  gallery.list()->setFocus();
  QTest::keyClicks(gallery.list(), "t");
  QTest::keyClicks(QApplication::focusWidget(), "ab saw");
  EXPECT_EQ(shownOffers(), QStringList{"Table saw"});
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  EXPECT_EQ(chosen, (std::vector<plan::Choice>{{What::Machine, "table-saw"}}));
}

TEST_F(GalleryOfAll, ChoosesByArrowsFromTheSearchLine) {
  gallery.search()->setFocus();
  QTest::keyClicks(gallery.search(), "room");
  QTest::keyClick(gallery.search(), Qt::Key_Down);
  QTest::keyClick(gallery.search(), Qt::Key_Return);
  EXPECT_EQ(chosen, (std::vector<plan::Choice>{{What::RoomByCorners}}));
}

TEST_F(GalleryOfAll, ChoosesByAClick) {
  const QTreeWidgetItem* door =
      gallery.list()->findItems("Door", Qt::MatchExactly | Qt::MatchRecursive).at(0);
  QTest::mouseClick(gallery.list()->viewport(), Qt::LeftButton, {},
                    gallery.list()->visualItemRect(door).center());
  EXPECT_EQ(chosen, (std::vector<plan::Choice>{{What::Door}}));
}

TEST_F(GalleryOfAll, SaysWhenNothingIsCalledThat) {
  gallery.search()->setFocus();
  QTest::keyClicks(gallery.search(), "zzz");
  EXPECT_TRUE(shownOffers().isEmpty());
  QTest::keyClick(gallery.search(), Qt::Key_Return);
  EXPECT_TRUE(chosen.empty());
  QTest::keyClick(gallery.search(), Qt::Key_Escape);
  EXPECT_FALSE(shownOffers().isEmpty());
}

TEST_F(GalleryOfAll, MarksWhatThePointerDraws) {
  gallery.showChoice({What::Station, "helper"});
  ASSERT_EQ(gallery.list()->selectedItems().size(), 1);
  EXPECT_EQ(gallery.list()->selectedItems().front()->text(0), "Helper");
  gallery.showChoice({});
  EXPECT_TRUE(gallery.list()->selectedItems().isEmpty());
  EXPECT_TRUE(chosen.empty());
}

}  // namespace
}  // namespace stopwalk::panels

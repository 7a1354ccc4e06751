#include "tests/app/panels/accessible.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QLineEdit>

#include "app/panels/actions/action_finder.h"
#include "app/panels/details/details.h"
#include "app/panels/gallery/gallery.h"
#include "app/panels/problems/problem_list.h"
#include "app/panels/things/move_dialog.h"
#include "app/panels/things/rename_dialog.h"
#include "app/panels/things/thing_list.h"
#include "tests/app/panels/workshop.h"

namespace stopwalk::panels {

namespace {

TEST(NamelessControls, AreFound) {
  QWidget widget;
  auto* line = new QLineEdit(&widget);
  EXPECT_EQ(namelessControls(widget).size(), 1);
  line->setAccessibleName("Height");
  EXPECT_TRUE(namelessControls(widget).isEmpty());
}

TEST(Details, HaveANameForEachControlOfEachKindOfThing) {
  Workshop shop;
  Details details(shop.desk);
  EXPECT_EQ(namelessControls(details).join("\n"), "");
  for (const edits::Thing& thing : edits::allThings(shop.layout())) {
    shop.selection.set(edits::idOf(shop.layout(), thing));
    QApplication::processEvents();
    EXPECT_EQ(namelessControls(details).join("\n"), "") << edits::idOf(shop.layout(), thing);
    for (const Field* field : details.section()->findChildren<Field*>())
      EXPECT_FALSE(field->whatsThis().isEmpty()) << field->name().toStdString();
  }
  shop.selection.set(std::vector<std::string>{"saw-1", "bench-1"});
  QApplication::processEvents();
  EXPECT_EQ(namelessControls(details).join("\n"), "");
}

TEST(Lists, HaveANameForEachControl) {
  Workshop shop;
  EXPECT_EQ(namelessControls(ThingList(shop.desk)).join("\n"), "");
  EXPECT_EQ(namelessControls(ProblemList()).join("\n"), "");
  EXPECT_EQ(namelessControls(MoveDialog(shop.desk)).join("\n"), "");
  EXPECT_EQ(namelessControls(RenameDialog(shop.desk, "saw-1")).join("\n"), "");
  QWidget window;
  EXPECT_EQ(namelessControls(ActionFinder(&window)).join("\n"), "");
}

TEST(Gallery, HasANameForEachControl) {
  const Gallery gallery(plan::bundledCatalogue());
  EXPECT_EQ(namelessControls(gallery).join("\n"), "");
}

}  // namespace
}  // namespace stopwalk::panels

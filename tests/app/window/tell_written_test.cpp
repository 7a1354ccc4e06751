// How a file that was made is told, whatever it holds.
#include "app/window/tell_written.h"

#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

using documents::Written;

struct Told {
  bool is_good = false;
  QString said;
  ToldAsker asker;
};

void tell(Told& told, Written written) {
  told.is_good = tellWritten(told.asker, "/shop/round.pdf", {written, "the disk is full"}, "It is there.",
                             [&](const QString& text) { told.said = text; });
}

TEST(TellWritten, WhatIsOnTheDiskIsSaid) {
  Told told;
  tell(told, Written::Yes);
  EXPECT_TRUE(told.is_good);
  EXPECT_EQ(told.said, "It is there.");
  EXPECT_TRUE(told.asker.asked.isEmpty());
}

TEST(TellWritten, WhatIsNotWrittenIsAskedAboutByItsName) {
  Told told;
  tell(told, Written::No);
  EXPECT_FALSE(told.is_good);
  EXPECT_EQ(told.said, "round.pdf was not written.");
  EXPECT_EQ(told.asker.asked, QStringList("round.pdf was not written"));
  EXPECT_EQ(told.asker.said, QStringList("the disk is full"));
}

TEST(TellWritten, WhatMayNotLastIsSaidAndAskedAbout) {
  Told told;
  tell(told, Written::Unsure);
  EXPECT_FALSE(told.is_good) << "nothing else is told of it";
  EXPECT_EQ(told.said, "It is there.");
  EXPECT_EQ(told.asker.asked, QStringList("Written, but perhaps not for good"));
}

}  // namespace
}  // namespace stopwalk::window

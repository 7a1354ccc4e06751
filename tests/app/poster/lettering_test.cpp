#include "app/poster/lettering.h"

#include <gtest/gtest.h>

namespace stopwalk::poster {
namespace {

TEST(Lettering, NoLineIsWiderThanAsked) {
  const Lettering letters(usualFamily());
  const QString text =
      QString("Press the red button on the headstock of the lathe ").repeated(3) + QString(200, 'W');
  for (const double width : {12.0, 30.0, 80.0})
    for (const QString& line : letters.wrapped(text, width, 4))
      EXPECT_LE(letters.width(line, 4), width + 1e-6);
}

TEST(Lettering, WrappingLosesNoLetter) {
  const Lettering letters(usualFamily());
  const QString text = "Throw the switch to horizontal " + QString(60, 'M') + " then wait";
  EXPECT_EQ(letters.wrapped(text, 25, 4).join("").remove(' '), QString(text).remove(' '));
}

TEST(Lettering, WidthGrowsWithTheLetters) {
  const Lettering letters(usualFamily());
  EXPECT_NEAR(letters.width("STOP", 8), 2 * letters.width("STOP", 4), 0.05);
}

TEST(Lettering, WhatNoFontHasIsNamed) {
  const Lettering letters(usualFamily());
  EXPECT_EQ(letters.missingFrom("Press the red button, 12.5 m (41 ft)."), "");
  // A place of the plane for private use that no font of ours fills.
  const char32_t nobodys = 0x10FFF0;
  EXPECT_EQ(letters.missingFrom("a" + QString::fromUcs4(&nobodys, 1)), QString::fromUcs4(&nobodys, 1));
}

TEST(Lettering, AFamilyThatIsNotThereIsSaid) {
  EXPECT_TRUE(hasFamily(usualFamily()));
  EXPECT_FALSE(hasFamily("No Such Letters"));
  QString slip = usualFamily();
  slip[0] = 'X';
  EXPECT_EQ(nearestFamily(slip), usualFamily());
}

}  // namespace
}  // namespace stopwalk::poster

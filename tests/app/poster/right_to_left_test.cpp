// A language that is read from right to left: the table, box and foot are mirrored, the plan is not, and
// nothing leaves the page.
#include <QTranslator>

#include "app/poster/block.h"
#include "tests/app/poster/sample.h"

namespace stopwalk::poster {
namespace {

// Every text in letters of the Hebrew alphabet, as long as the English one; the places for numbers are kept.
class Pseudo : public QTranslator {
 public:
  QString translate(const char*, const char* text, const char*, int) const override {
    QString said = QString::fromUtf8(text);
    for (qsizetype i = 0; i < said.size(); ++i)
      if (said[i].isLetter()) said[i] = QChar(0x05D0 + said[i].toLower().unicode() % 26);
    return said;
  }
  bool isEmpty() const override { return false; }
};

Poster posterIn(const Sample& sample, Language language) {
  Wish wish = wishFor("a3");
  wish.languages = {std::move(language)};
  return sample.shop->poster(sample.room("hall"), std::nullopt, wish);
}

const Language kPseudo("he", std::make_shared<Pseudo>());

TEST(RightToLeft, IsKnownByTheLanguage) {
  EXPECT_TRUE(kPseudo.rightToLeft());
  EXPECT_FALSE(Language("de").rightToLeft());
}

TEST(RightToLeft, NothingLeavesThePage) {
  const Sample sample(Sample::fileText("tram-depot"));
  const Poster poster = posterIn(sample, kPseudo);
  ASSERT_TRUE(poster.document);
  const Lettering letters(poster.document->family);
  for (const Page& page : poster.document->pages)
    for (const Mark& mark : page.marks)
      if (const Text* text = std::get_if<Text>(&mark)) {
        EXPECT_GE(text->at.x(), 5) << text->text.toStdString();
        EXPECT_LE(text->at.x() + letters.width(text->text, text->cap, text->bold), page.size.width() - 5)
            << text->text.toStdString();
      }
}

// The signs of the table stand right of their words.
TEST(RightToLeft, TheTableIsMirrored) {
  Block block;
  const Lettering letters(usualFamily());
  block.marks.push_back(Sign{"paddle", plan::Ground::Stop, QRectF(0, 0, 8, 8)});
  block.marks.push_back(Text{"words", {12, 6}, 4, false});
  mirror(block.marks, 100, letters);
  EXPECT_DOUBLE_EQ(std::get<Sign>(block.marks[0]).square.left(), 92);
  EXPECT_NEAR(std::get<Text>(block.marks[1]).at.x() + letters.width("words", 4), 88, 1e-9);
}

// The numbered signs of the plan: where things are does not depend on the language.
TEST(RightToLeft, ThePlanIsNot) {
  const Sample sample(Sample::fileText("tram-depot"));
  const Poster english = posterIn(sample, Language("en")), pseudo = posterIn(sample, kPseudo);
  ASSERT_TRUE(english.document && pseudo.document);
  const auto cutOffs = [](const Poster& poster) {
    std::vector<QPointF> places;
    for (const Mark& mark : poster.document->pages[0].marks)
      if (const Sign* sign = std::get_if<Sign>(&mark);
          sign && sign->symbol == "room-cut-off" && sign->square.width() > 9)
        places.push_back(sign->square.center());
    return places;
  };
  const auto a = cutOffs(english), b = cutOffs(pseudo);
  ASSERT_GE(a.size(), 2u);
  ASSERT_GE(b.size(), 2u);
  EXPECT_EQ(a[0].x() < a[1].x(), b[0].x() < b[1].x());
  EXPECT_EQ(a[0].y() < a[1].y(), b[0].y() < b[1].y());
}

}  // namespace
}  // namespace stopwalk::poster

// Posters that do not fit, or not on one page.
#include "app/poster/poster.h"

#include "tests/app/poster/sample.h"

namespace stopwalk::poster {
namespace {

std::string shop(const std::string& size, const std::string& machines) {
  return "stopwalk_layout: 1\nunits: mm\nsite: {name: A shop}\nrooms:\n  - {id: a, name: Hall, outline: [[0, "
         "0], [" +
         size + ", 0], [" + size + ", 9000], [0, 9000]]}\nmachines:\n" + machines + "...\n";
}

// A press with its stops all in one place, told apart by their kinds.
std::string press(int stops, const std::string& instruction = "Press.") {
  std::string text =
      "  - {id: m, name: Press, at: [6000, 4000], footprint: {width: 800, depth: 800}, devices: [";
  for (int i = 0; i < stops; ++i)
    text += std::string(i == 0 ? "" : ", ") + "{id: s" + std::to_string(i) +
            ", kind: " + (i % 2 == 0 ? "paddle" : "mushroom-button") +
            ", at: [0, -200], height: 1000, instruction: " + instruction + "}";
  return text + "]}\n";
}

QString whyNone(const std::string& layout) {
  const Poster poster = Sample(layout).shop->poster(0, std::nullopt, wishFor("a2"));
  EXPECT_FALSE(poster.document);
  EXPECT_EQ(poster.shortfalls.size(), 1u);
  return poster.shortfalls.empty() ? QString() : poster.shortfalls[0].text;
}

// Who is told to divide a room of which nothing is too large divides it for nothing.
TEST(PosterThatIsNone, NamesWhatIsTooMuch) {
  const QString large = whyNone(shop("200000", press(1)));
  EXPECT_TRUE(large.contains("the room does not fit on A2 at 1:250")) << large.toStdString();
  EXPECT_TRUE(large.contains("divide the room"));
  const QString crowd = whyNone(shop("12000", press(120)));
  EXPECT_TRUE(crowd.contains("so many stops stand so close")) << crowd.toStdString();
  EXPECT_FALSE(crowd.contains("divide the room"));
  std::string words;
  for (int i = 0; i < 6000; ++i) words += "word ";
  const QString wordy = whyNone(shop("12000", press(1, words + "end")));
  EXPECT_TRUE(wordy.contains("longer than a page of A2")) << wordy.toStdString();
  EXPECT_TRUE(wordy.contains("in fewer words"));
}

// The pages after the first may be lost, or hang elsewhere.
TEST(PosterOfSeveralPages, SaysOnEachButTheLastThatItGoesOn) {
  const Sample sample(shop("12000", press(60)));
  for (const std::vector<std::string>& languages : {std::vector<std::string>{"en"}, {"en", "de"}}) {
    const Poster poster = sample.shop->poster(0, std::nullopt, wishFor("a3", languages));
    ASSERT_TRUE(poster.document);
    const std::vector<Page>& pages = poster.document->pages;
    ASSERT_GT(pages.size(), 1u);
    for (std::size_t p = 0; p < pages.size(); ++p) {
      const QString said = QStringLiteral("see page %1 of %2.").arg(p + 2).arg(pages.size());
      EXPECT_EQ(wordsOn(pages[p]).contains(said), p + 1 < pages.size()) << p;
      EXPECT_EQ(wordsOn(pages[p]).contains("The list goes on"), p + 1 < pages.size()) << p;
    }
  }
}

// Nothing of the table is written over by those words.
TEST(PosterOfSeveralPages, ItsWordsThatItGoesOnCoverNothing) {
  const Sample sample(shop("12000", press(60)));
  const Poster poster = sample.shop->poster(0, std::nullopt, wishFor("a3"));
  ASSERT_TRUE(poster.document);
  const Lettering letters(poster.document->family);
  for (const Page& page : poster.document->pages) {
    std::vector<QRectF> words, others;
    for (const Mark& mark : page.marks)
      if (const Text* text = std::get_if<Text>(&mark)) {
        const QRectF box(text->at - QPointF(0, text->cap),
                         QSizeF(letters.width(text->text, text->cap, text->bold), text->cap));
        (text->text.contains("The list goes on") ? words : others).push_back(box);
      }
    for (const QRectF& w : words)
      for (const QRectF& o : others) EXPECT_FALSE(w.intersects(o)) << w.top() << " " << o.top();
  }
}

TEST(PostersInOneFile, AreNamedByAllTheirRooms) {
  const Sample sample(Sample::fileText("scene-shop"));
  std::vector<Document> documents;
  for (std::size_t r = 0; r < 2; ++r)
    documents.push_back(*sample.shop->poster(r, std::nullopt, wishFor("a2")).document);
  const std::size_t pages = documents[0].pages.size() + documents[1].pages.size();
  const Document all = joined(documents);
  EXPECT_EQ(all.title(), documents[0].title() + ", " + documents[1].of);
  EXPECT_EQ(all.pages.size(), pages);
  for (const Document& one : documents) EXPECT_TRUE(all.subject.contains(one.subject));
}

}  // namespace
}  // namespace stopwalk::poster

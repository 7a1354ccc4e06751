// The sizes of the norms measured in the finished PDF, by what is on its pages and not by our constants.
// Published values: ISO 23601:2020 cl. 6 (as reproduced): letters 2 mm, header 7 % of the smallest dimension
// and its letters 60 % of it, signs 7 mm, walls 1.6 and 0.6 mm. ISO 3864-4 colours by RAL number (DGUV
// Information 211-041; hex as quoted).
#include <QSet>
#include <queue>

#include "app/poster/sizes.h"
#include "app/poster/texts.h"
#include "tests/app/poster/finished.h"
#include "tests/app/poster/sample.h"

namespace stopwalk::poster {
namespace {

constexpr QRgb kRed = 0xFF9B2423, kYellow = 0xFFF9A800, kGreen = 0xFF237F52;

bool near(QRgb a, QRgb b, int by = 24) {
  return std::abs(qRed(a) - qRed(b)) <= by && std::abs(qGreen(a) - qGreen(b)) <= by &&
         std::abs(qBlue(a) - qBlue(b)) <= by;
}
bool dark(QRgb c) {
  return qGray(c) < 128;
}

// A plate has a rim of ink on all sides.
bool hasRim(const QImage& page, const QRect& box) {
  const QPoint c = box.center();
  for (const QPoint p : {QPoint(box.left() - 2, c.y()), QPoint(box.right() + 2, c.y()),
                         QPoint(c.x(), box.top() - 2), QPoint(c.x(), box.bottom() + 2)})
    if (!page.rect().contains(p) || !dark(page.pixel(p))) return false;
  return true;
}

struct Room {
  const char* file;
  const char* room;
  const char* paper;
};

class Measured : public testing::TestWithParam<Room> {
 protected:
  Measured()
      : sample_(Sample::fileText(GetParam().file)),
        wish_(wishFor(GetParam().paper)),
        poster_(sample_.shop->poster(sample_.room(GetParam().room), std::nullopt, wish_)) {}

  void SetUp() override {
    ASSERT_TRUE(poster_.document);
    finished_ = std::make_unique<Finished>(*poster_.document);
  }

  double shortSide() const { return std::min(wish_.paper.width_mm, wish_.paper.height_mm); }

  // The height of the red band at the page's top.
  double header() const {
    int y = 0;
    while (near(finished_->picture().pixel(3, y), kRed)) ++y;
    return y * finished_->pixel_mm;
  }

  // A word's first letter, which is a capital.
  double capitalHeight(const Word& word, bool white_on_red = false) const {
    const double width = word.box.width() / static_cast<double>(word.text.size());
    const QRectF first(word.box.left(), word.box.top(), width * 0.9, word.box.height());
    return finished_->inkHeight(first,
                                [&](QRgb c) { return white_on_red ? qGray(c) > 160 : qGray(c) < 150; });
  }

  std::optional<Word> word(const QString& text, double below = 0) const {
    for (const Word& w : finished_->words())
      if (w.text == text && w.box.top() >= below) return w;
    return std::nullopt;
  }

  Sample sample_;
  Wish wish_;
  Poster poster_;
  std::unique_ptr<Finished> finished_;
};

TEST_P(Measured, HeaderIsSevenPercentAndItsLettersSixty) {
  EXPECT_GE(header(), 0.07 * shortSide() - finished_->pixel_mm);
  const auto title = word("LOCATIONS");
  ASSERT_TRUE(title);
  EXPECT_GE(capitalHeight(*title, true), 0.6 * 0.07 * shortSide() - finished_->pixel_mm);
  EXPECT_GE(capitalHeight(*title, true), 0.6 * header() - finished_->pixel_mm);
}

TEST_P(Measured, TheTablesLettersAreFourMillimetres) {
  const auto press = word("Press", header());
  ASSERT_TRUE(press);
  EXPECT_GE(capitalHeight(*press), 4 - finished_->pixel_mm);
}

TEST_P(Measured, TheSmallestLettersAreTwoMillimetres) {
  const auto caution = word("Drawn");
  ASSERT_TRUE(caution);
  EXPECT_GE(capitalHeight(*caution), 2 - finished_->pixel_mm);
  // No word's font is smaller than the caution's.
  for (const Word& w : finished_->words())
    EXPECT_GE(w.box.height(), caution->box.height() - 0.01) << w.text.toStdString();
}

// The plates, as connected places of yellow or of what is drawn on it.
TEST_P(Measured, EverySignIsSevenMillimetresHigh) {
  const QImage& page = finished_->picture();
  const int top = static_cast<int>((header() + 1) * finished_->per_mm);
  QImage seen(page.size(), QImage::Format_Grayscale8);
  seen.fill(0);
  int plates = 0;
  for (int y = top; y < page.height(); y += 8)
    for (int x = 0; x < page.width(); x += 8) {
      if (!near(page.pixel(x, y), kYellow) || qGray(seen.pixel(x, y)) > 0) continue;
      QRect box(x, y, 1, 1);
      std::queue<QPoint> next;
      next.push({x, y});
      seen.setPixel(x, y, qRgb(255, 255, 255));
      while (!next.empty()) {
        const QPoint p = next.front();
        next.pop();
        box = box.united(QRect(p, QSize(1, 1)));
        for (const QPoint d : {QPoint(1, 0), QPoint(-1, 0), QPoint(0, 1), QPoint(0, -1)}) {
          const QPoint q = p + d;
          if (!page.rect().contains(q) || qGray(seen.pixel(q)) > 0) continue;
          const QRgb c = page.pixel(q);
          if (!near(c, kYellow, 60) && !near(c, kRed, 60)) continue;
          seen.setPixel(q, qRgb(255, 255, 255));
          next.push(q);
        }
      }
      const double height = box.height() * finished_->pixel_mm, width = box.width() * finished_->pixel_mm;
      if (std::abs(height - width) > 0.3 * std::max(height, width)) continue;  // a bar
      if (!hasRim(page, box)) continue;                                        // a short bar
      ++plates;
      // The plate's rim is ink: a 24th of its side above and below.
      EXPECT_GE(height * 24 / 22, 7 - 2 * finished_->pixel_mm)
          << "at " << box.x() * finished_->pixel_mm << ", " << box.y() * finished_->pixel_mm;
    }
  const Content content = sample_.shop->content(sample_.room(GetParam().room), std::nullopt);
  std::size_t stops = 0;
  for (const Group& g : content.groups) stops += g.stops.size();
  EXPECT_GE(plates, static_cast<int>(stops));  // on the plan; the table has them again
}

// The foot's line of 100 mm, from its first tick to its last.
TEST_P(Measured, TheCheckBarIsAHundredMillimetres) {
  const auto words = finished_->words();
  const auto print = word("Print");
  ASSERT_TRUE(print);
  const QImage& page = finished_->picture();
  double longest = 0;
  for (double y = print->box.top(); y < print->box.bottom(); y += finished_->pixel_mm) {
    int run = 0;
    for (int x = 0; x < static_cast<int>(print->box.left() * finished_->per_mm); ++x) {
      run = dark(page.pixel(x, static_cast<int>(y * finished_->per_mm))) ? run + 1 : 0;
      longest = std::max(longest, run * finished_->pixel_mm);
    }
  }
  EXPECT_NEAR(longest, 100, 0.35 + 2 * finished_->pixel_mm);
}

TEST_P(Measured, TextIsFoundAndAllOnThePage) {
  const QString text = finished_->text();
  EXPECT_TRUE(text.contains("STOP LOCATIONS"));
  EXPECT_TRUE(text.contains("Press the red button."));
  EXPECT_TRUE(text.simplified().contains("Never rely on a stop as a guard"));
  EXPECT_TRUE(text.contains(QString::fromStdString(sample_.sha256.substr(0, kShortHash))));
  const QRectF page(QPointF(), poster_.document->pages[0].size);
  for (const Word& w : finished_->words())
    EXPECT_TRUE(page.adjusted(5, 0, -5, -5).contains(w.box)) << w.text.toStdString();
}

TEST_P(Measured, FontsAreEmbeddedAndTheLanguageIsSet) {
  const QString fonts = outputOf("pdffonts", {finished_->path("poster.pdf")});
  const QStringList lines = fonts.split('\n', Qt::SkipEmptyParts);
  ASSERT_GT(lines.size(), 2);
  for (qsizetype i = 2; i < lines.size(); ++i) {
    const QStringList columns = lines[i].simplified().split(' ');
    EXPECT_EQ(columns[columns.size() - 5], "yes") << lines[i].toStdString();  // emb
  }
  QFile file(finished_->path("poster.pdf"));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  const QByteArray bytes = file.readAll();
  EXPECT_TRUE(bytes.contains("/Lang (en)"));
  EXPECT_TRUE(bytes.contains("/DisplayDocTitle true"));
  EXPECT_TRUE(outputOf("pdfinfo", {finished_->path("poster.pdf")}).contains("STOP LOCATIONS"));
}

TEST_P(Measured, TheCodeIsReadBack) {
  const Bytes png = pngOf(*poster_.document, 0, 200);
  QFile file(finished_->path("code.png"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(png.bytes);
  file.close();
  const QString read = outputOf("zbarimg", {"--raw", "-q", finished_->path("code.png")}).trimmed();
  EXPECT_TRUE(read.contains(QString::fromStdString(sample_.sha256))) << read.toStdString();
  EXPECT_EQ(read, poster_.document->subject);
}

INSTANTIATE_TEST_SUITE_P(All, Measured,
                         testing::Values(Room{"tram-depot", "hall", "a3"}, Room{"tram-depot", "smithy", "a4"},
                                         Room{"scene-shop", "shop", "letter"},
                                         Room{"school-wing", "metal", "a2"}),
                         [](const auto& p) { return std::string(p.param.room) + "On" + p.param.paper; });

// A square room that stands alone but for one neighbour, with the poster on its north wall.
TEST(MeasuredWalls, AreAsWideAsTheNormAsks) {
  const Sample sample(R"(stopwalk_layout: 1
units: mm
site: {name: A shop}
rooms:
  - {id: a, name: Shop, outline: [[0, 0], [6000, 0], [6000, 6000], [0, 6000]]}
  - {id: b, name: Store, outline: [[6100, 0], [9000, 0], [9000, 6000], [6100, 6000]]}
machines:
  - {id: saw, name: Saw, at: [3000, 3000], footprint: {width: 600, depth: 600}, stations: [{id: operator, role: operator, at: [0, -900]}], devices: [{id: stop, kind: mushroom-button, at: [0, -300], height: 1000}]}
...
)");
  const Poster poster = sample.shop->poster(0, viewerNear(sample.layout, 0, {3000, 6000}), wishFor("a3"));
  ASSERT_TRUE(poster.document);
  const Finished finished(*poster.document);
  // Across the plan beside the machine, from the left: the outer wall, then the partition.
  const QImage& page = finished.picture();
  double y_mm = 0;
  for (const Word& w : finished.words())
    if (w.text == "Saw" && y_mm == 0 && w.box.top() > 30) y_mm = w.box.bottom() + 1500.0 / poster.scale;
  ASSERT_GT(y_mm, 0);
  std::vector<double> widths;
  int run = 0;
  for (int x = 0; x < page.width(); ++x) {
    if (dark(page.pixel(x, int(y_mm * finished.per_mm)))) {
      ++run;
    } else {
      if (run * finished.pixel_mm > 0.4) widths.push_back(run * finished.pixel_mm);
      run = 0;
    }
  }
  ASSERT_GE(widths.size(), 2u);
  EXPECT_NEAR(widths[0], 1.6, 2 * finished.pixel_mm);
  EXPECT_NEAR(widths[1], 0.6, 2 * finished.pixel_mm);
}

TEST(Colours, CanBeReadAndToldApartInGrey) {
  const QRgb white = 0xFFFFFFFF, ink = 0xFF1F2328, blue = 0xFF0072B2;
  EXPECT_GE(contrast(white, kRed), 4.5);    // title
  EXPECT_GE(contrast(white, kGreen), 4.5);  // heading of the box
  EXPECT_GE(contrast(white, blue), 4.5);    // "you are here", lengths
  EXPECT_GE(contrast(white, ink), 7);
  EXPECT_GE(contrast(kYellow, kRed), 3);  // a sign on its plate
  const auto grey = [](QRgb c) { return qRgb(qGray(c), qGray(c), qGray(c)); };
  EXPECT_GE(contrast(grey(kYellow), grey(kRed)), 3);
  EXPECT_GE(contrast(grey(white), grey(kGreen)), 3);
}

TEST(Letters, AreReadAsFarAsTheTableSays) {  // ASR A1.3 Table 3
  EXPECT_EQ(readTo_m(1.9), 0);
  EXPECT_EQ(readTo_m(2), 0.5);
  EXPECT_EQ(readTo_m(4), 1);
  EXPECT_EQ(readTo_m(7.9), 1);
  EXPECT_EQ(readTo_m(8), 2);
  EXPECT_EQ(readTo_m(13.9), 3);
  EXPECT_EQ(readTo_m(100), 30);
  EXPECT_NEAR(recognisedTo_m(100), 6, 1e-12);  // 60 x 0.10 m, ISO 3864-1:2011 as quoted
}

}  // namespace
}  // namespace stopwalk::poster

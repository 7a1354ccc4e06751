// Small pictures of posters beside those that were looked at and kept. Eased, so that another version of the
// letters passes and a thing out of its place does not. After a change that is meant:
// STOPWALK_UPDATE_GOLDEN=1, run, and look at what changed.
#include <QImage>
#include <QPainter>
#include <cstdlib>

#include "app/poster/paint_page.h"
#include "tests/app/poster/sample.h"

namespace stopwalk::poster {
namespace {

struct Golden {
  const char* file;
  const char* room;
  const char* paper;
  std::vector<std::string> languages;
};

QImage small(const Document& document) {
  constexpr double kFine = 4, kPerMm = 0.9;
  const QSizeF size = document.pages[0].size * kPerMm;
  QImage fine((size * kFine).toSize(), QImage::Format_RGB32);
  fine.fill(Qt::white);
  QPainter painter(&fine);
  paintPage(painter, document.pages[0], document.family, kPerMm * kFine);
  painter.end();
  return fine.scaled(size.toSize(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
}

// The largest mean difference of brightness or colour over squares of some 9 mm, 0 to 255.
double farthest(const QImage& a, const QImage& b) {
  if (a.size() != b.size()) return 255;
  const QSize eased(a.width() / 8, a.height() / 8);
  const QImage x = a.scaled(eased, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
  const QImage y = b.scaled(eased, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
  double most = 0;
  for (int row = 0; row < x.height(); ++row)
    for (int column = 0; column < x.width(); ++column) {
      const QColor p = x.pixelColor(column, row), q = y.pixelColor(column, row);
      most = std::max<double>({most, std::abs(p.redF() - q.redF()), std::abs(p.greenF() - q.greenF()),
                               std::abs(p.blueF() - q.blueF())});
    }
  return 255 * most;
}

class Posters : public testing::TestWithParam<Golden> {};

TEST_P(Posters, LookAsTheyDid) {
  const Golden& g = GetParam();
  const Sample sample(Sample::fileText(g.file));
  const Poster poster = sample.shop->poster(sample.room(g.room), std::nullopt, wishFor(g.paper, g.languages));
  ASSERT_TRUE(poster.document);
  const QImage now = small(*poster.document);
  const QString file =
      QStringLiteral(STOPWALK_SOURCE_DIR "/tests/app/poster/golden/%1-%2.png").arg(g.file, g.room);
  if (std::getenv("STOPWALK_UPDATE_GOLDEN")) {
    ASSERT_TRUE(now.save(file));
  }
  const QImage before = QImage(file).convertToFormat(QImage::Format_RGB32);
  ASSERT_FALSE(before.isNull()) << "to accept: STOPWALK_UPDATE_GOLDEN=1";
  EXPECT_LT(farthest(now, before), 60) << "to accept: STOPWALK_UPDATE_GOLDEN=1";
}

INSTANTIATE_TEST_SUITE_P(All, Posters,
                         testing::Values(Golden{"tram-depot", "hall", "a3", {"en"}},
                                         Golden{"tram-depot", "wood", "a4", {"en"}},
                                         Golden{"scene-shop", "shop", "letter", {"en"}},
                                         Golden{"school-wing", "cnc", "a2", {"en"}}),
                         [](const auto& p) { return "Golden" + std::to_string(p.index); });

// The comparison sees what matters: one sign moved by a centimetre.
TEST(GoldenPictures, SeeAThingOutOfItsPlace) {
  const Sample sample(Sample::fileText("tram-depot"));
  Poster poster = sample.shop->poster(sample.room("hall"), std::nullopt, wishFor("a3"));
  ASSERT_TRUE(poster.document);
  const QImage before = small(*poster.document);
  for (Mark& mark : poster.document->pages[0].marks)
    if (Sign* sign = std::get_if<Sign>(&mark); sign && sign->square.width() > 13) {
      sign->square.translate(20, 20);
      break;
    }
  EXPECT_GE(farthest(small(*poster.document), before), 60);
}

}  // namespace
}  // namespace stopwalk::poster

#include "app/poster/poster.h"

#include <algorithm>

#include "app/poster/choices.h"
#include "app/poster/plan_picture.h"
#include "app/poster/poster_shortfalls.h"
#include "app/poster/texts.h"

namespace stopwalk::poster {
namespace {

constexpr double kUnnamedCost = 0.05;   // of a machine without its name on the plan
constexpr std::size_t kMostDrawn = 60;  // arrangements drawn before giving up
constexpr std::size_t kMostGood = 10;   // that could be taken, before the best of them is
constexpr double kOverBox_mm = 1;       // of the words that the table goes on

enum class NoPoster { RoomTooLarge, TooMuchToTell, SignsTooClose };

class Maker {
 public:
  Maker(const Content& content, const About& about, const Wish& wish)
      : content_(content),
        about_(about),
        wish_(wish),
        parts_(content, about, wish),
        choices_(choicesOf(content, about.layout, wish, parts_)) {
    choices_.by_cost.resize(std::min(choices_.by_cost.size(), kMostDrawn));
  }

  // Of there being no poster.
  NoPoster why() const {
    if (!choices_.room_fits) return NoPoster::RoomTooLarge;
    return choices_.by_cost.empty() ? NoPoster::TooMuchToTell : NoPoster::SignsTooClose;
  }

  Poster make() {
    const Choice* best = nullptr;
    PlanPicture best_plan;
    double least = 0;
    std::size_t good = 0;
    for (const Choice& choice : choices_.by_cost) {
      if (best && (choice.cost >= least || good >= kMostGood)) break;
      PlanPicture plan = planPicture(content_, about_.layout, wish_.languages, parts_.letters(),
                                     choice.arrangement.plan, choice.scale, choice.arrangement.sizes);
      if (!plan.signs_placed) continue;
      ++good;
      const double cost = choice.cost + kUnnamedCost * static_cast<double>(plan.unnamed.size());
      if (best && cost >= least) continue;
      best = &choice;
      best_plan = std::move(plan);
      least = cost;
    }
    return best ? finished(*best, std::move(best_plan)) : Poster{};
  }

 private:
  // The marks go to the page mirrored where one reads from right to left.
  void put(Page& page, Block block, QPointF at, double width) const {
    if (wish_.languages.front().rightToLeft()) mirror(block.marks, width, parts_.letters());
    shift(block.marks, at);
    page.marks.insert(page.marks.end(), block.marks.begin(), block.marks.end());
  }

  // The table from a block on; returns the first that is left over.
  std::size_t putColumns(Page& page, const Choice& choice, std::size_t done,
                         const std::vector<QRectF>& columns, const std::vector<std::size_t>& taken) {
    const std::vector<Block>& table = parts_.table(choice.arrangement);
    for (std::size_t k = 0; k < columns.size(); ++k) {
      double y = columns[k].top();
      for (std::size_t n = 0; n < taken[k]; ++n, ++done) {
        put(page, table[done], {columns[k].left(), y}, columns[k].width());
        y += table[done].height;
      }
    }
    return done;
  }

  // At the end of the last column, `above` its foot, unless the table is at its end.
  void putGoesOn(Page& page, const Choice& choice, std::size_t number, const QRectF& column, double above) {
    const std::size_t pages = choice.taken.size();
    if (number == pages) return;
    const Block words = parts_.goesOn(choice.arrangement, number + 1, pages);
    put(page, words, column.bottomLeft() - QPointF(0, above + words.height), column.width());
  }

  void putFoot(Page& page, const Sizes& sizes) {
    const double width = page.size.width() - 2 * kMargin_mm;
    Block foot = parts_.foot(page.size, sizes);
    foot.marks.push_back(footCode(content_, about_, width));
    put(page, foot, {kMargin_mm, page.size.height() - kMargin_mm - foot.height}, width);
  }

  Page firstPage(const Choice& choice, std::vector<Mark> plan) {
    const Arrangement& a = choice.arrangement;
    Page page{a.page, std::move(plan)};
    put(page, parts_.header(a.page), {}, a.page.width());
    putColumns(page, choice, 0, a.columns, choice.taken.front());
    const Block box = parts_.box(a);
    put(page, box, a.columns.back().bottomLeft() - QPointF(0, box.height), a.column_width);
    putGoesOn(page, choice, 1, a.columns.back(), box.height + kOverBox_mm);
    putFoot(page, a.sizes);
    return page;
  }

  // Returns the first block that is left over.
  std::size_t addPage(Document& document, const Choice& choice, std::size_t done) {
    const Arrangement& a = choice.arrangement;
    const std::size_t number = document.pages.size() + 1;
    Page& page = document.pages.emplace_back(Page{a.page, {}});
    put(page, parts_.headerAgain(a.page, number, choice.taken.size()), {}, a.page.width());
    const std::vector<QRectF> columns = parts_.furtherColumns(a);
    const std::size_t next = putColumns(page, choice, done, columns, choice.taken[number - 1]);
    putGoesOn(page, choice, number, columns.back(), 0);
    putFoot(page, a.sizes);
    return next;
  }

  Poster finished(const Choice& choice, PlanPicture plan) {
    Poster poster;
    poster.scale = choice.scale;
    Document& document = poster.document.emplace();
    document.family = wish_.family;
    document.language = QString::fromStdString(wish_.languages.front().key());
    document.heading = wish_.languages.front().say(texts::kTitle);
    document.of = QString::fromStdString(content_.room_name);
    document.subject = codeText(content_, about_);
    document.pages.push_back(firstPage(choice, std::move(plan.marks)));
    std::size_t done = 0;
    for (const std::size_t blocks : choice.taken.front()) done += blocks;
    while (document.pages.size() < choice.taken.size()) done = addPage(document, choice, done);
    poster.shortfalls = shortfallsOf(document, plan, content_, about_, wish_);
    return poster;
  }

  const Content& content_;
  const About& about_;
  const Wish& wish_;
  PosterParts parts_;
  Choices choices_;
};

// The next larger paper on which there is a poster.
const Paper* paperThatWould(const Content& content, const About& about, const Wish& wish) {
  for (const Paper& paper : papers()) {
    if (paper.width_mm * paper.height_mm <= wish.paper.width_mm * wish.paper.height_mm) continue;
    Wish larger = wish;
    larger.paper = paper;
    larger.landscape.reset();
    if (Maker(content, about, larger).make().document) return &paper;
  }
  return nullptr;
}

QString sentenceOf(NoPoster why, const Paper& paper) {
  switch (why) {
    case NoPoster::RoomTooLarge:
      return Told::tr("the room does not fit on %1 at 1:%2 or larger").arg(paper.name).arg(kSmallestScale);
    case NoPoster::TooMuchToTell:
      return Told::tr("what is to be told of a machine, or in an emergency, is longer than a page of %1")
          .arg(paper.name);
    case NoPoster::SignsTooClose:
      break;
  }
  return Told::tr("so many stops stand so close that their signs of %1 mm find no place on %2")
      .arg(kLeastSign_mm)
      .arg(paper.name);
}

QString adviceFor(NoPoster why) {
  switch (why) {
    case NoPoster::RoomTooLarge:
      return Told::tr("no paper that can be chosen would do; divide the room, or draw it as two");
    case NoPoster::TooMuchToTell:
      return Told::tr("no paper that can be chosen would do; say it in fewer words");
    case NoPoster::SignsTooClose:
      break;
  }
  return Told::tr(
      "no paper that can be chosen would do; see whether each is drawn where it is, and only once");
}

}  // namespace

Poster makePoster(const Content& content, const About& about, const Wish& wish) {
  Maker maker(content, about, wish);
  Poster poster = maker.make();
  if (poster.document) return poster;
  const Paper* paper = paperThatWould(content, about, wish);
  const QString would = paper ? Told::tr("%1 would do").arg(paper->name) : adviceFor(maker.why());
  poster.shortfalls.push_back({Told::tr("%1; %2").arg(sentenceOf(maker.why(), wish.paper), would), true});
  return poster;
}

}  // namespace stopwalk::poster

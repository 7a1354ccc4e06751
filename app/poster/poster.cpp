#include "app/poster/poster.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "app/poster/arrangement.h"
#include "app/poster/plan_frame.h"
#include "app/poster/plan_picture.h"
#include "app/poster/table.h"
#include "app/poster/texts.h"

namespace stopwalk::poster {
namespace {

constexpr double kGap_mm = 4;
// What is weighed in choosing: the plan's scale, by its logarithm, against the rest.
constexpr double kPageCost = 1.2;
constexpr double kElsewhereCost = 1.0;  // of a table that is not on the first page at all
constexpr double kLetterGain = 0.5;     // by the logarithm of the table's letters
constexpr double kSignGain = 0.3;       // by that of the signs
constexpr double kCrowdCost = 3;        // of signs that cover the whole floor
constexpr double kTinyCost = 0.04;      // of a machine too small for its name
constexpr double kTiny_mm = 9;          // on paper
constexpr double kUnnamedCost = 0.05;   // of a machine without its name on the plan
constexpr std::size_t kMostDrawn = 60;  // arrangements drawn before giving up
constexpr std::size_t kMostGood = 10;   // that could be taken, before the best of them is

struct Choice {
  Arrangement arrangement;
  int scale = 0;
  std::vector<std::size_t> taken;  // blocks of the table in each column of the first page
  double cost = 0;
};

class Maker {
 public:
  Maker(const Content& content, const About& about, const Wish& wish)
      : content_(content),
        about_(about),
        wish_(wish),
        letters_(wish.family),
        room_(turnedSize(about.layout.rooms[content.room].outline, content.viewer.up_deg)) {
    for (const layout::Machine& m : about.layout.machines) {
      const bool here = std::ranges::any_of(content.groups, [&](const Group& g) { return g.id == m.id; });
      if (here)
        widths_mm_.push_back(
            turnedSize(layout::outlineInPlan(m.footprint, m.at, m.turn), content.viewer.up_deg).width());
    }
  }

  Poster make() {
    std::vector<Choice> choices = choicesByCost();
    choices.resize(std::min(choices.size(), kMostDrawn));
    const Choice* best = nullptr;
    PlanPicture best_plan;
    double least = 0;
    std::size_t good = 0;
    for (const Choice& choice : choices) {
      if (best && (choice.cost >= least || good >= kMostGood)) break;
      PlanPicture plan = planPicture(content_, about_.layout, wish_.languages, letters_,
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
  using Table = std::vector<Block>;

  QRectF bodyOf(QSizeF page) {
    const double header = headerOf(content_, wish_.languages, letters_, page).height;
    const double foot = footFor(page, Sizes{}).height;
    return QRectF(kMargin_mm, header + kGap_mm, page.width() - 2 * kMargin_mm,
                  page.height() - header - foot - 2 * kGap_mm - kMargin_mm);
  }

  const Block& footFor(QSizeF page, const Sizes& sizes) {
    Block& foot = feet_[{page.width(), sizes.table_cap, sizes.sign}];
    if (foot.marks.empty()) foot = footNew(page, sizes);
    return foot;
  }

  Block footNew(QSizeF page, const Sizes& sizes) const {
    return footOf(content_, about_, wish_.languages, letters_, page.width() - 2 * kMargin_mm, titleCap(page),
                  sizes);
  }

  const Table& tableFor(double width, const Sizes& sizes) {
    Table& table = tables_[{std::lround(width * 100), std::lround(sizes.table_cap * 100)}];
    if (table.empty()) table = tableBlocks(content_, wish_.languages, letters_, width, sizes);
    return table;
  }

  Block boxFor(const Arrangement& a) const {
    return emergencyBox(content_, about_, wish_.languages, letters_, a.column_width, a.sizes.table_cap);
  }

  std::vector<Choice> choicesByCost() {
    std::vector<Choice> choices;
    for (const bool landscape : {true, false}) {
      if (wish_.landscape && *wish_.landscape != landscape) continue;
      const QSizeF page = wish_.paper.size(landscape);
      for (const Arrangement& a : arrangementsOf(page, bodyOf(page)))
        if (auto choice = choiceOf(a)) choices.push_back(*choice);
    }
    std::ranges::stable_sort(choices, {}, &Choice::cost);
    return choices;
  }

  std::optional<Choice> choiceOf(const Arrangement& a) {
    const QSizeF ring = ringOf(a.sizes) * 2;
    const int scale = scaleFor(room_, a.plan.size() - ring);
    if (scale == 0) return std::nullopt;
    const Block box = boxFor(a);
    std::vector<double> heights;
    for (const QRectF& column : a.columns) heights.push_back(column.height());
    heights.back() -= box.height + kGap_mm;
    if (heights.back() < 0) return std::nullopt;

    Choice choice{a, scale, flow(tableFor(a.column_width, a.sizes), heights), 0};
    const std::size_t pages = pagesOf(choice);
    if (pages == 0) return std::nullopt;
    const double elsewhere = 1 - static_cast<double>(sum(choice.taken)) /
                                     static_cast<double>(tableFor(a.column_width, a.sizes).size());
    choice.cost = std::log(scale) + kPageCost * static_cast<double>(pages - 1) + kElsewhereCost * elsewhere -
                  kLetterGain * std::log(a.sizes.table_cap) - kSignGain * std::log(a.sizes.sign) +
                  kCrowdCost * crowdOf(a.sizes, scale) + kTinyCost * tinyAt(scale);
    return choice;
  }

  // How much of the floor the signs cover.
  double crowdOf(const Sizes& sizes, int scale) const {
    std::size_t signs = content_.not_stops.size();
    for (const Group& group : content_.groups) signs += group.stops.size();
    const double one = sizes.sign * (1 + kNumberPart) * sizes.sign;
    return static_cast<double>(signs) * one * scale * scale / (room_.width() * room_.height());
  }

  double tinyAt(int scale) const {
    return static_cast<double>(
        std::ranges::count_if(widths_mm_, [&](double mm) { return mm / scale < kTiny_mm; }));
  }

  // The columns of a page after the first.
  std::vector<QRectF> furtherColumns(const Arrangement& a) {
    const double top = goesOnHeader(content_, wish_.languages, letters_, a.page.width(), 2, 2).height;
    const double foot = footFor(a.page, a.sizes).height;
    const double free = a.page.width() - 2 * kMargin_mm;
    const int count = std::max(1, static_cast<int>((free + 6) / (a.column_width + 6)));
    std::vector<QRectF> columns;
    for (int k = 0; k < count; ++k)
      columns.emplace_back(kMargin_mm + k * (a.column_width + 6), top, a.column_width,
                           a.page.height() - top - foot - kGap_mm - kMargin_mm);
    return columns;
  }

  static std::size_t sum(const std::vector<std::size_t>& taken) {
    std::size_t all = 0;
    for (const std::size_t n : taken) all += n;
    return all;
  }

  // 0: an entry is longer than a page.
  std::size_t pagesOf(const Choice& choice) {
    const Table& table = tableFor(choice.arrangement.column_width, choice.arrangement.sizes);
    std::size_t done = sum(choice.taken), pages = 1;
    while (done < table.size()) {
      const std::size_t more = sum(onFurtherPage(choice.arrangement, table, done));
      if (more == 0) return 0;
      done += more;
      ++pages;
    }
    return pages;
  }

  std::vector<std::size_t> onFurtherPage(const Arrangement& a, const Table& table, std::size_t done) {
    std::vector<double> heights;
    for (const QRectF& column : furtherColumns(a)) heights.push_back(column.height());
    return flow({table.begin() + static_cast<std::ptrdiff_t>(done), table.end()}, heights);
  }

  // The marks go to the page mirrored where one reads from right to left.
  void put(Page& page, Block block, QPointF at, double width) const {
    if (wish_.languages.front().rightToLeft()) mirror(block.marks, width, letters_);
    shift(block.marks, at);
    page.marks.insert(page.marks.end(), block.marks.begin(), block.marks.end());
  }

  std::size_t putColumns(Page& page, const Table& table, std::size_t done, const std::vector<QRectF>& columns,
                         const std::vector<std::size_t>& taken) const {
    for (std::size_t k = 0; k < columns.size(); ++k) {
      double y = columns[k].top();
      for (std::size_t n = 0; n < taken[k]; ++n, ++done) {
        put(page, table[done], {columns[k].left(), y}, columns[k].width());
        y += table[done].height;
      }
    }
    return done;
  }

  void putFoot(Page& page, const Sizes& sizes) {
    const double width = page.size.width() - 2 * kMargin_mm;
    Block foot = footFor(page.size, sizes);
    foot.marks.push_back(footCode(content_, about_, width));
    put(page, foot, {kMargin_mm, page.size.height() - kMargin_mm - foot.height}, width);
  }

  Poster finished(const Choice& choice, PlanPicture plan) {
    const Arrangement& a = choice.arrangement;
    const Table& table = tableFor(a.column_width, a.sizes);
    Poster poster;
    poster.scale = choice.scale;
    Document& document = poster.document.emplace();
    document.family = wish_.family;
    document.language = QString::fromStdString(wish_.languages.front().key());
    document.title =
        wish_.languages.front().say(texts::kTitle) + ": " + QString::fromStdString(content_.room_name);
    document.subject = codeText(content_, about_);

    Page first{a.page, std::move(plan.marks)};
    put(first, headerOf(content_, wish_.languages, letters_, a.page), {}, a.page.width());
    std::size_t done = putColumns(first, table, 0, a.columns, choice.taken);
    const Block box = boxFor(a);
    put(first, box, a.columns.back().bottomLeft() - QPointF(0, box.height), a.column_width);
    putFoot(first, a.sizes);
    document.pages.push_back(std::move(first));

    const std::size_t pages = pagesOf(choice);
    while (done < table.size()) {
      Page page{a.page, {}};
      put(page,
          goesOnHeader(content_, wish_.languages, letters_, a.page.width(), document.pages.size() + 1, pages),
          {}, a.page.width());
      done = putColumns(page, table, done, furtherColumns(a), onFurtherPage(a, table, done));
      putFoot(page, a.sizes);
      document.pages.push_back(std::move(page));
    }
    tell(poster, plan, pages);
    return poster;
  }

  void tell(Poster& poster, const PlanPicture& plan, std::size_t pages) const;
  QString lettersMissing(const Poster& poster) const;

  const Content& content_;
  const About& about_;
  const Wish& wish_;
  Lettering letters_;
  QSizeF room_;
  std::vector<double> widths_mm_;  // of the room's machines as they are turned, mm of the shop
  std::map<std::pair<long, long>, Table> tables_;
  std::map<std::array<double, 3>, Block> feet_;
};

QString Maker::lettersMissing(const Poster& poster) const {
  QString missing;
  for (const Page& page : poster.document->pages)
    for (const Mark& mark : page.marks)
      if (const Text* text = std::get_if<Text>(&mark))
        for (const char32_t sign : letters_.missingFrom(text->text).toStdU32String())
          if (const QString letter = QString::fromUcs4(&sign, 1); !missing.contains(letter))
            missing += letter;
  return missing;
}

void Maker::tell(Poster& poster, const PlanPicture& plan, std::size_t pages) const {
  const auto add = [&](const QString& text) { poster.shortfalls.push_back({text, false}); };
  if (pages > 1)
    add(QStringLiteral("the table does not fit beside the plan on %1: it goes on to %2 pages")
            .arg(wish_.paper.name)
            .arg(pages));
  if (const QString boxes = lettersMissing(poster); !boxes.isEmpty())
    add(QStringLiteral("no font here has these letters, which print as empty boxes: %1").arg(boxes));
  if (!plan.off_plan.isEmpty())
    add(QStringLiteral("drawn outside the room, and so in the table only, without a sign: %1")
            .arg(plan.off_plan.join(", ")));
  if (!plan.unnamed.isEmpty())
    add(QStringLiteral("no place on the plan for the name of %1; the table has it")
            .arg(plan.unnamed.join(", ")));
  if (const double cap = roomCap(content_, wish_.languages, letters_, poster.document->pages.front().size);
      cap < titleCap(poster.document->pages.front().size))
    add(QStringLiteral("the room's name is too long for the header's letters: it is in letters of %1 mm")
            .arg(cap, 0, 'f', 1));
  const layout::Site& site = about_.layout.site;
  QStringList missing;
  if (site.emergency_call.empty()) missing << "what to dial (`emergency_call`)";
  if (site.address.empty()) missing << "the address to say (`address`)";
  if (site.meet_responders_at.empty()) missing << "where to meet the responders (`meet_responders_at`)";
  if (!missing.isEmpty())
    add(QStringLiteral("the layout's `site` does not say %1; the poster has a line to fill in by hand")
            .arg(missing.join(", ")));
  if (!about_.layout.revision)
    add("the layout has no `revision`: nobody can tell this poster from an older one but by its hash");
}

}  // namespace

Poster makePoster(const Content& content, const About& about, const Wish& wish) {
  Poster poster = Maker(content, about, wish).make();
  if (poster.document) return poster;
  QString would = "no paper that can be chosen would do; divide the room, or draw it as two";
  for (const Paper& paper : papers()) {
    if (paper.width_mm * paper.height_mm <= wish.paper.width_mm * wish.paper.height_mm) continue;
    Wish larger = wish;
    larger.paper = paper;
    larger.landscape.reset();
    if (!Maker(content, about, larger).make().document) continue;
    would = QStringLiteral("%1 would do").arg(paper.name);
    break;
  }
  poster.shortfalls.push_back(
      {QStringLiteral("the poster of %1 does not fit on %2 at 1:%3 or larger with signs of %4 mm; %5")
           .arg(QString::fromStdString(content.room_name), wish.paper.name)
           .arg(kSmallestScale)
           .arg(kLeastSign_mm)
           .arg(would),
       true});
  return poster;
}

}  // namespace stopwalk::poster

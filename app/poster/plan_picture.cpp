#include "app/poster/plan_picture.h"

#include <algorithm>
#include <cmath>

#include "app/poster/colours.h"
#include "app/poster/furniture.h"
#include "app/poster/phone_route.h"
#include "app/poster/plan_names.h"
#include "app/poster/plan_signs.h"
#include "app/poster/texts.h"
#include "app/poster/wall_lines.h"
#include "core/geometry/segment.h"
#include "core/layout/names.h"

namespace stopwalk::poster {
namespace {

constexpr double kBar_mm = 1.2;          // a bar or a cord
constexpr double kFromWall_mm = 2.6;     // a name outside from the wall's inner edge
constexpr double kLeastFromWall_mm = 3;  // the dot where the reader stands

QPainterPath polygonPath(const QPolygonF& polygon) {
  QPainterPath path;
  path.addPolygon(polygon);
  return path;
}

class Picture {
 public:
  Picture(const Content& content, const layout::Layout& layout, const Languages& languages,
          const Lettering& letters, QRectF area, int scale, const Sizes& sizes)
      : content_(content),
        layout_(layout),
        machine_names_(layout.machines),
        room_names_(layout.rooms),
        languages_(languages),
        letters_(letters),
        area_(area),
        sizes_(sizes),
        outline_(layout.rooms[content.room].outline),
        frame_(outline_, content.viewer.up_deg, scale, area),
        on_page_(frame_(outline_)),
        way_(content.phone.path, frame_, on_page_) {
    picture_.room = on_page_.boundingRect();
    kept_.all = area;
    kept_.room = picture_.room.adjusted(-kStructuralWall_mm, -kStructuralWall_mm, kStructuralWall_mm,
                                        kStructuralWall_mm);
  }

  PlanPicture draw() {
    walls();
    fixtures();
    machines();
    route();
    bars();
    youAreHere();
    doors();
    signs();
    routeLength();
    names();
    scaleBar();
    return std::move(picture_);
  }

 private:
  void add(Mark mark) { picture_.marks.push_back(std::move(mark)); }
  void add(const NameBlock& name) {
    for (const Text& line : name.lines) add(Mark(line));
  }
  void keep(const QRectF& box) {
    kept_.kept.push_back(box);
    taken_.add(box);
  }

  void walls() {
    for (qsizetype i = 1; i < on_page_.size(); ++i) taken_.add(QLineF(on_page_[i - 1], on_page_[i]));
    for (const WallLine& wall : wallLines(layout_, content_.room, frame_))
      add(drawn(linePath(wall.line.p1(), wall.line.p2()), inks().ink, wall.width));
    // Where two walls meet at an inner corner they reach into the floor; the floor covers that.
    add(filled(polygonPath(on_page_), kPaperWhite));
  }

  void fixtures() {
    for (const layout::Fixture& f : layout_.fixtures) {
      const QPolygonF shape = frame_(layout::outlineInPlan(f.footprint, f.at, f.turn));
      if (!isHere(shape)) continue;
      Shape drawn_shape = drawn(polygonPath(shape), inks().hatch, 0.25);
      drawn_shape.fill = inks().fixture;
      add(drawn_shape);
    }
  }

  bool isHere(const QPolygonF& shape) const {
    return on_page_.containsPoint(shape.boundingRect().center(), Qt::OddEvenFill);
  }

  void machines() {
    for (const layout::Machine& m : layout_.machines) {
      if (!on_page_.containsPoint(frame_(m.at), Qt::OddEvenFill)) continue;
      const QPolygonF shape = frame_(layout::outlineInPlan(m.footprint, m.at, m.turn));
      Shape body = drawn(polygonPath(shape), inks().ink, m.id == content_.marked ? 1.0 : 0.35);
      body.fill = inks().machine;
      add(body);
      machines_.push_back({QString::fromStdString(machine_names_.of(m)), shape.boundingRect()});
      kept_.dear.push_back({shape.boundingRect(), 10});
    }
  }

  void route() {
    if (way_.empty()) return;
    for (Mark& mark : way_.marks()) add(std::move(mark));
    if (way_.outside()) taken_.add(*way_.outside());
    kept_.dear.push_back({QRectF(way_.end() - QPointF(2, 2), way_.end() + QPointF(2, 2)), 20});
  }

  void routeLength() {
    if (way_.empty()) return;
    const NameBlock length = nameBlock(walkText(content_.phone.length_mm, languages_.front()), 60,
                                       sizes_.name_cap * 1.1, letters_, true, inks().selection);
    const auto placed = way_.beside(length, [&](const QRectF& box) {
      return picture_.room.contains(box) && taken_.free(box) && !coversMachine(box);
    });
    if (placed) {
      add(*placed);
      taken_.add(placed->box);
    }
    for (const QLineF& piece : way_.pieces()) taken_.add(piece);
  }

  bool coversMachine(const QRectF& box) const {
    return std::ranges::any_of(machines_, [&](const Named& m) { return m.box.intersects(box); });
  }

  void bars() {
    for (const Listed* l : listedIn(content_)) {
      if (l->line.a == l->line.b || l->ground != plan::Ground::Stop) continue;
      const QPainterPath bar = linePath(frame_(l->line.a), frame_(l->line.b));
      add(drawn(bar, inks().stop_ground, 2 * kBar_mm));
      add(drawn(bar, inks().stop_sign, kBar_mm));
    }
  }

  // The dot where the reader stands before the wall that the poster hangs on; up is through that wall. At a
  // small scale so far from it that it can be seen.
  QPointF readersPlace() const {
    const QPointF wall = frame_(content_.viewer.at), stands = frame_(content_.viewer.stands());
    if (content_.reader == Content::Reader::AtViewer) return wall;
    return {wall.x(), std::max(stands.y(), wall.y() + kLeastFromWall_mm)};
  }

  void youAreHere() {
    if (content_.reader == Content::Reader::NotShown) return;
    const bool before_wall = content_.reader == Content::Reader::BeforeWall;
    const QPointF at = readersPlace();
    Shape ring = drawn(discPath(at, 5), inks().selection, 0.9);
    ring.fill = kPaperWhite;
    add(ring);
    add(filled(discPath(at, 2.4), inks().selection));
    keep(QRectF(at - QPointF(3, 3), QSizeF(6, 6)));
    if (!before_wall) return;
    nameOutside(sayEach(languages_, texts::kYouAreHere).join(" / "), frame_(content_.viewer.at),
                QPointF(0, -1), sizes_.name_cap * 1.2, true, inks().selection);
  }

  void doors() {
    for (const DoorWay& way : doorWays(layout_, content_.room, frame_)) {
      const QPointF wide = way.out * (kStructuralWall_mm + 0.1);
      QPolygonF gap;
      gap << way.opening.p1() << way.opening.p2() << way.opening.p2() + wide << way.opening.p1() + wide;
      add(filled(polygonPath(gap), kPaperWhite));
      for (const QPointF jamb : {way.opening.p1(), way.opening.p2()})
        add(drawn(linePath(jamb, jamb + wide), inks().ink, 0.35));
      nameOutside(nameOf(way), way.opening.center(), way.out, sizes_.name_cap, false, inks().ink);
    }
  }

  QString nameOf(const DoorWay& way) const {
    if (way.to == layout::kOutside) return sayEach(languages_, texts::kOutside).join(" / ");
    for (const layout::Room& r : layout_.rooms)
      if (r.id == way.to)
        return languages_.front().say(texts::kTo).arg(QString::fromStdString(room_names_.of(r)));
    return {};
  }

  double longestWord(const QString& words, double cap, bool bold) const {
    double longest = 0;
    for (const QString& word : words.split(' ')) longest = std::max(longest, letters_.width(word, cap, bold));
    return longest;
  }

  // Words outside the wall beside a place on it, moved so that they stay in the area and off each other.
  void nameOutside(const QString& words, QPointF at, QPointF out, double cap, bool bold, QColor colour) {
    const bool across = std::abs(out.x()) > std::abs(out.y());
    const double most = across ? std::max(8.0, ringOf(sizes_).width() - kFromWall_mm - 1) : 60;
    while (cap > kLeastLetter_mm * 1.02 && longestWord(words, cap, bold) > most) cap *= 0.95;
    cap = std::max(cap, kLeastLetter_mm * 1.02);
    NameBlock name = nameBlock(words, most, cap, letters_, bold, colour);
    const QSizeF half = name.box.size() / 2;
    const double away = kFromWall_mm + (across ? half.width() : half.height());
    const QPointF along(-out.y(), out.x());
    const auto fits = [&](double further, double aside) {
      QPointF centre = at + out * (away + further) + along * aside;
      centre.setX(std::clamp(centre.x(), area_.left() + half.width(),
                             std::max(area_.left() + half.width(), area_.right() - half.width())));
      moveCentre(name, centre);
      return taken_.free(name.box);
    };
    const double row = 2 * half.height() + 1;
    for (const double further : {0.0, row, 2 * row})
      if (std::ranges::any_of(std::initializer_list<double>{0, 6, -6, 12, -12, 20, -20, 30, -30},
                              [&](double aside) { return fits(further, aside); }))
        break;
    add(name);
    keep(name.box);
  }

  void signs() {
    for (const Listed* l : listedIn(content_))
      if (l->off_plan) picture_.off_plan << QString::fromStdString(l->id);
    auto signs = planSigns(content_, frame_, sizes_, letters_, kept_);
    picture_.signs_placed = signs.has_value();
    if (!signs) return;
    for (Mark& mark : signs->marks) add(std::move(mark));
    for (const PlacedCallOut& placed : signs->placed) {
      taken_.add(placed.box);
      if (placed.led()) taken_.add(placed.leader);
    }
  }

  void names();
  void scaleBar();

  struct Named {
    QString name;
    QRectF box;
  };
  const Content& content_;
  const layout::Layout& layout_;
  const layout::NamesApart machine_names_, room_names_;  // as the lists beside the plan have them
  const Languages& languages_;
  const Lettering& letters_;
  QRectF area_;
  Sizes sizes_;
  const geometry::Polygon& outline_;
  PlanFrame frame_;
  QPolygonF on_page_;  // the outline, closed
  PlanPicture picture_;
  CallOutArea kept_;
  Taken taken_;
  std::vector<Named> machines_;
  PhoneRoute way_;
};

void Picture::names() {
  for (std::size_t i = 0; i < machines_.size(); ++i) {
    std::vector<QRectF> others;
    for (std::size_t k = 0; k < machines_.size(); ++k)
      if (k != i) others.push_back(machines_[k].box);
    const auto name = placeName(machines_[i].name, machines_[i].box, picture_.room, sizes_.name_cap, letters_,
                                taken_, others);
    if (!name) {
      picture_.unnamed << machines_[i].name;
      continue;
    }
    add(*name);
    taken_.add(name->box);
  }
}

// Below the plan at the left: a few whole metres, and the scale as numbers.
void Picture::scaleBar() {
  const double metre = 1000.0 / frame_.scale();
  const int metres = std::max(1, static_cast<int>(40 / metre));
  const double y = area_.bottom() + 3, x = area_.left();
  for (int m = 0; m < metres; ++m) {
    Shape part = drawn(rectanglePath({x + m * metre, y, metre, 1.4}), inks().ink, 0.25);
    part.fill = m % 2 == 0 ? inks().ink : kPaperWhite;
    add(part);
  }
  add(Text{QStringLiteral("%1 m    1 : %2").arg(metres).arg(frame_.scale()),
           {x + metres * metre + 2, y + 2},
           2.2,
           false,
           inks().ink});
}

}  // namespace

QSizeF ringOf(const Sizes& sizes) {
  // A cut-off with its number, and at top and bottom a name between it and the wall.
  return {sizes.cutOff() + kNumberPart * sizes.sign + 4, sizes.cutOff() + 4};
}

PlanPicture planPicture(const Content& content, const layout::Layout& layout, const Languages& languages,
                        const Lettering& letters, QRectF area, int scale, const Sizes& sizes) {
  return Picture(content, layout, languages, letters, area, scale, sizes).draw();
}

}  // namespace stopwalk::poster

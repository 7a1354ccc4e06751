#include "app/plan/plan_view.h"

#include <QPainter>
#include <QResizeEvent>
#include <algorithm>

#include "app/plan/description.h"
#include "app/plan/guides.h"
#include "app/plan/number_entry.h"
#include "app/plan/rulers.h"
#include "app/plan/supposed.h"
#include "app/plan/tools/tools.h"

namespace stopwalk::plan {
namespace {

constexpr double kMargin_px = 48;
constexpr double kNear = 0.03;            // pixels a millimetre, from which a symbol can be read
constexpr double kFirstRoom_mm = 12000;   // what an empty plan shows
constexpr double kTag_px = 24;            // what a drag says of itself stands above what it changes
constexpr double kMostCovered = 1.0 / 6;  // of the plan, by what a drag says of itself
constexpr int kPatience_ms = 12;          // of the 16 of a frame

}  // namespace

PlanView::PlanView(edits::EditedLayout& edited, edits::Selection& selection, Catalogue catalogue,
                   QWidget* parent)
    : QWidget(parent),
      edited_(edited),
      selection_(selection),
      catalogue_(std::move(catalogue)),
      theme_(Theme::of(palette())),
      tool_(makeTool({}, *this)),
      entry_(new NumberEntry(this)) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("Plan"));
  describeForReaders();
  patience_.setSingleShot(true);
  patience_.setTimerType(Qt::PreciseTimer);
  patience_.setInterval(kPatience_ms);
  connect(&patience_, &QTimer::timeout, this, [this] {
    audits_are_late_ = true;
    update();
  });
  connect(&edited_, &edits::EditedLayout::changed, this, &PlanView::layoutChanged);
  connect(&selection_, &edits::Selection::changed, this, [this] {
    say();
    update();
  });
  connect(entry_, &NumberEntry::typed, this,
          [this](std::size_t field, double value) { tool_->setField(field, value); });
  connect(entry_, &NumberEntry::accepted, this, [this] {
    setFocus();
    tool_->accept();
  });
  connect(entry_, &NumberEntry::left, this, [this] {
    setFocus();
    if (!tool_->cancel()) finished();
  });
}

PlanView::~PlanView() = default;

void PlanView::choose(const Choice& choice) {
  if (edited_.isReadOnly() && choice.what != Choice::What::Select)
    return emit said(tr("This layout is open for looking only: nothing can be drawn."));
  preview(std::nullopt);
  choice_ = choice;
  tool_ = makeTool(choice, *this);
  showCursor();
  fieldsChanged();
  say();
  emit chosen(choice_);
}

void PlanView::setSources(Catalogue catalogue, const QString& folder) {
  catalogue_ = std::move(catalogue);
  pictures_ = picturesIn(folder);
  drawn_.reset();
  preview(std::nullopt);  // told, so that nothing goes on showing what was never put down
  layoutChanged();
}

void PlanView::setReport(std::shared_ptr<const audit::Report> report, bool is_current,
                         std::shared_ptr<const audit::Report> as_it_is,
                         std::shared_ptr<const floor::NarrowPlaces> narrow_places) {
  marks_.set({std::move(report), is_current, isPreviewing(), std::move(as_it_is), std::move(narrow_places),
              isHolding()},
             shown());
  say();
  paintSoon();
}

void PlanView::lookAt(const audit::Finding* finding) {
  marks_.lookAt(finding);
  update();
}

void PlanView::showReach(std::shared_ptr<const ReachLayer> reach, bool is_current) {
  reach_ = std::move(reach);
  reach_is_current_ = is_current;
  paintSoon();
}

void PlanView::showInspected(std::optional<InspectedOnPlan> inspected) {
  if (inspected && inspection_ && inspection_->inspected() == *inspected) return;
  if (inspected.has_value() != inspection_.has_value()) drawn_.reset();
  inspection_.reset();
  if (inspected) inspection_.emplace(std::move(*inspected));
  say();
  update();
}

void PlanView::setSupposed(planning::Suppositions suppositions) {
  suppositions_ = std::move(suppositions);
  update();
}

void PlanView::setFailed(std::vector<std::string> devices) {
  if (devices == failed_) return;
  failed_ = std::move(devices);
  update();
}

// Where the plan shows what the records say, a cross of theirs at the device is enough.
std::vector<std::string> PlanView::failedUnmarked(const std::vector<std::string>& with_own_sign) const {
  std::vector<std::string> devices = failed_;
  std::erase_if(devices, [&](const std::string& id) {
    return inspection_ && inspection_->isFailed(id) &&
           std::ranges::find(with_own_sign, id) != with_own_sign.end();
  });
  return devices;
}

void PlanView::fit() {
  geometry::Box box = picture().bounds();
  if (box.empty()) box = {{0, 0}, {kFirstRoom_mm, kFirstRoom_mm * 0.7}};
  view_.fit(box, QSizeF(width() - kRuler_px, height() - kRuler_px), kMargin_px);
  view_.pan({kRuler_px, kRuler_px});
  fitted_ = view_;
  update();
}

// Whoever looks at the whole goes on seeing the whole, and else what was in the middle stays there; under the
// pointer that drags something nothing moves.
void PlanView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (panned_from_ || isPreviewing() || isHolding()) return;
  if (never_fitted_ || view_ == fitted_) {
    never_fitted_ = false;
    return fit();
  }
  const QSize by = event->size() - event->oldSize();
  if (event->oldSize().isValid()) view_.pan(QPoint(by.width() / 2, by.height() / 2));  // in whole pixels
  keepInSight();
}

// A plan of which nothing is to be seen looks like one that is lost.
void PlanView::keepInSight() {
  const geometry::Box box = picture().bounds();
  const QRectF seen = QRectF(rect()).adjusted(kRuler_px, kRuler_px, 0, 0);
  if (!box.empty() && !seen.intersects(view_.toPixels(box).adjusted(-1, -1, 1, 1))) fit();
}

void PlanView::zoomBy(double factor) {
  view_.zoomAt(QPointF(width() / 2.0, height() / 2.0), factor);
  update();
}

void PlanView::showGrid(bool shows) {
  shows_grid_ = shows;
  update();
}

void PlanView::goTo(const std::string& id) {
  const Item* item = picture().find(id);
  if (!item || item->bounds().empty()) return;
  const geometry::Box box = marks_.withWalksOf(id, item->bounds());
  const QRectF seen = QRectF(rect()).adjusted(kRuler_px, kRuler_px, 0, 0);
  const QRectF where = view_.toPixels(box);
  const bool is_large = std::max(where.width(), where.height()) > 24 || view_.pixelsPerMm() >= kNear;
  if (seen.contains(where) && is_large) return update();
  view_.fit(box.grown(2000), QSizeF(width(), height()), kMargin_px);
  update();
}

void PlanView::bringIntoSight(const std::string& id) {
  const Item* item = picture().find(id);
  const QRectF seen = QRectF(rect()).adjusted(kRuler_px, kRuler_px, 0, 0);
  if (item && !item->bounds().empty() && !seen.contains(view_.toPixels(item->bounds()))) fit();
}

geometry::Point PlanView::middle() const {
  return view_.toPlan(QPointF(width() / 2.0, height() / 2.0));
}

const Picture& PlanView::picture() const {
  if (drawn_ && drawn_->shown.get() == &shown()) return drawn_->picture;
  std::shared_ptr<const layout::Layout> layout = snapshot();
  if (inspection_) {
    layout::Layout inspected = *layout;
    inspected.tape_checks.clear();  // they look like a walk
    layout = std::make_shared<const layout::Layout>(std::move(inspected));
  }
  std::optional<EarlierItems> earlier;
  if (drawn_) earlier.emplace(EarlierItems{*drawn_->layout, drawn_->picture.items()});
  drawn_ = Drawn{snapshot(), layout, Picture(*layout, catalogue_.kinds, pictures_, earlier)};
  return drawn_->picture;
}

void PlanView::preview(std::optional<layout::Layout> layout) {
  if (!layout && !preview_) return;
  preview_ = layout ? std::make_shared<const layout::Layout>(std::move(*layout)) : nullptr;
  if (!preview_) patience_.stop();
  if (preview_ && !audits_are_late_ && !patience_.isActive()) patience_.start();
  emit previewed(preview_);
  paintSoon();
}

void PlanView::paintSoon() {
  if (marks_.isCurrent() && (!reach_ || reach_is_current_)) {
    patience_.stop();
    audits_are_late_ = false;
  }
  if (!patience_.isActive()) update();
}

bool PlanView::commit(edits::Edit edit) {
  patience_.stop();
  preview_.reset();
  const geometry::Box before = picture().bounds();
  const bool done = edited_.apply(std::move(edit));
  if (!done) emit previewed(nullptr);
  showGrowth(before);
  update();
  return done;
}

// What was typed beyond the plan's edges, and out of sight, is brought into sight.
void PlanView::showGrowth(const geometry::Box& before) {
  const geometry::Box now = picture().bounds();
  if (now.empty()) return;
  geometry::Box both = before;
  both.add(now);
  const bool grew = before.empty() || both.low != before.low || both.high != before.high;
  if (grew && !QRectF(rect()).contains(view_.toPixels(now))) fit();
}

void PlanView::layoutChanged() {
  patience_.stop();
  preview_.reset();
  tool_->layoutChanged();
  if (isVisible()) never_fitted_ ? fit() : keepInSight();
  say();
  update();
}

void PlanView::fieldsChanged() {
  entry_->show(tool_->fields(), shown().unit);
  placeEntry();
  say();
}

void PlanView::finished() {
  QTimer::singleShot(0, this, [this] { choose({}); });  // the tool is still at work
}

void PlanView::placeEntry() {
  entry_->move(static_cast<int>(kRuler_px) + 8, static_cast<int>(kRuler_px) + 8);
}

void PlanView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF visible(rect());
  painter.fillRect(visible, theme_.outside);
  Marks marks;
  marks.selected = [this](const std::string& id) { return selection_.contains(id); };
  marks.hovered = hovered_;
  if (inspection_)
    marks.checks = &inspection_->marks();
  else
    marks.states = &marks_.states();
  if (shows_grid_) {
    marks.grid = shown().unit;
    paintGrid(painter, view_, theme_, theme_.outside, visible, shown().unit);
  }
  const QRectF inside = visible.adjusted(kRuler_px, kRuler_px, 0, 0);
  // Where devices are inspected the walk is that of the round.
  const RoutesOnPlan routes = inspection_ ? RoutesOnPlan() : marks_.routes(view_, selection_);
  marks.taken = routes.lengthBoxes();
  QRectF legend;
  if (reach_) {
    marks.on_floors = [this](QPainter& p) { reach_->paint(p, asSeen(), reach_is_current_); };
    marks.labels = reach_->labels(view_);
    marks.taken.push_back(legend = legend_ = reachLegendIn(inside));
  }
  if (inspection_) {
    marks.labels = inspection_->labels(picture(), view_);
    marks.taken.push_back(legend = inspection_->legendBox(picture(), view_, inside));
  }
  const std::vector<std::string> with_own_sign = picture().paint(painter, view_, theme_, inside, marks);
  if (inspection_) inspection_->paintWalk(painter, view_, theme_);
  marks_.paintFaults(painter, view_, theme_, picture());
  paintOutOfOrder(painter, view_, theme_, shown(), failedUnmarked(with_own_sign));
  paintSupposed(painter, view_, theme_, shown(), suppositions_);
  routes.paint(painter, theme_);
  if (reach_) reach_->paintLegend(painter, theme_, legend, reach_is_current_);
  if (inspection_ && !legend.isEmpty()) inspection_->legend().paint(painter, theme_, legend);
  paintScaleBar(painter, view_, theme_, visible.size(), shown().unit);
  marks_.paintChanges(painter, view_, theme_, shown());
  tool_->paintOver(painter);
  if (pointer_ && (isPreviewing() || isHolding()))
    paintTagAtPointer(painter, theme_, *pointer_, tellsOfChanges(), isPreviewing() ? kTag_px : 0);
  else if (pointer_ && !panned_from_)
    paintTagAtPointer(painter, theme_, *pointer_, tellsOfCheck(hovered_));
  paintRulers(painter, view_, theme_, visible.size(), shown().unit, pointer_);
}

// Where it hides least of what stands on the floors; while something is dragged, where it was.
QRectF PlanView::reachLegendIn(const QRectF& visible) {
  const LegendSought sought{view_, visible, snapshot(), reach_};
  const bool is_dragging =
      (isPreviewing() || isHolding()) && legend_sought_.reach && legend_sought_.visible == visible;
  if (!is_dragging && sought != legend_sought_) {
    std::vector<QRectF> marks;
    for (const auto& item : picture().items())
      if (item->layer >= ItemLayer::Machine && !item->bounds().empty())
        marks.push_back(view_.toPixels(item->bounds()));
    legend_place_ = reach_->legendPlace(view_, visible, std::move(marks));
    legend_sought_ = sought;
  }
  return reach_->legendBox(legend_place_, visible, reach_is_current_);
}

void PlanView::leaveEvent(QEvent*) {
  pointer_.reset();
  hovered_.clear();
  say();
  update();
}

void PlanView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) theme_ = Theme::of(palette());
  QWidget::changeEvent(event);
}

QString PlanView::tellsOfChanges() const {
  const QRectF inside = tagRoom(rect());
  const auto isSmall = [&](const QString& text) {
    const QSizeF size = tagSize(text, font(), inside);
    return size.width() * size.height() <= kMostCovered * inside.width() * inside.height();
  };
  QString text = marks_.tellsOfChanges();
  for (std::size_t most = AuditMarks::kMostTold; --most > 0 && !isSmall(text);)
    text = marks_.tellsOfChanges(most);
  return text;
}

QString PlanView::tellsOfCheck(const std::string& id) const {
  const QString told = inspection_ ? inspection_->told(id) : QString();
  const auto thing = told.isEmpty() ? std::nullopt : edits::findThing(shown(), id);
  return thing ? tr("%1\n%2", "what it is; what its last check came to")
                     .arg(describe(shown(), catalogue_.kinds, *thing, nullptr), told)
               : QString();
}

// With what the records say of the device that is picked.
void PlanView::describeForReaders() {
  QString said = tr("The plan of the workshop. The list of things beside it does the same by keyboard.");
  if (selection_.ids().size() == 1)
    if (const QString check = tellsOfCheck(selection_.ids().front()); !check.isEmpty())
      said = tr("%1 Picked: %2").arg(said, QString(check).replace('\n', ": "));
  if (said != accessibleDescription()) setAccessibleDescription(said);
}

// Walks only where they are those of what is shown; what a drag changes stands beside the pointer.
void PlanView::say() {
  QString sentence;
  const audit::Report* walks = marks_.isCurrent() && !isPreviewing() ? marks_.report() : nullptr;
  if (const auto thing = hovered_.empty() ? std::nullopt : edits::findThing(shown(), hovered_))
    sentence = describe(shown(), catalogue_.kinds, *thing, walks) + "   ";
  if (const std::size_t left_out = inspection_ ? 0 : marks_.walksLeftOut(selection_))
    sentence += tr("The walks of %1 more stations that are picked are not drawn.").arg(left_out) + "   ";
  describeForReaders();
  const bool is_fixed = edited_.isReadOnly() && !selection_.empty();  // what is picked cannot be moved
  if (isHolding()) return emit said(tr("Release to put it there; Escape leaves it where it was."));
  emit said(is_fixed ? sentence.trimmed() : sentence + tool_->prompt());
}

}  // namespace stopwalk::plan

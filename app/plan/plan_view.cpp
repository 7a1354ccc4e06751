#include "app/plan/plan_view.h"

#include <QInputDevice>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPainter>
#include <QWheelEvent>
#include <cmath>

#include "app/plan/description.h"
#include "app/plan/guides.h"
#include "app/plan/number_entry.h"
#include "app/plan/pointing.h"
#include "app/plan/routes.h"
#include "app/plan/rulers.h"
#include "app/plan/supposed.h"
#include "app/plan/tools/tools.h"

namespace stopwalk::plan {
namespace {

constexpr double kMargin_px = 48;
constexpr double kNotch = 120;  // of a wheel, in eighths of a degree
constexpr double kZoomANotch = 1.25;
constexpr double kNear = 0.03;           // pixels a millimetre, from which a symbol can be read
constexpr double kFirstRoom_mm = 12000;  // what an empty plan shows

constexpr const char* kDrawingFault = "drawing-fault";  // the rule that the drawing itself is at fault

StationState stateOf(const audit::StationReport& station, bool is_current) {
  if (!is_current) return StationState::BeingComputed;
  switch (station.verdict) {
    case audit::Verdict::Meets:
      return StationState::Meets;
    case audit::Verdict::Warns:
      return StationState::Warns;
    case audit::Verdict::Fails:
      return StationState::Fails;
  }
  return StationState::NotAudited;
}

// Two fingers on a touchpad give many small steps in pixels; a wheel gives notches.
bool isTouchpad(const QWheelEvent& event) {
  return !event.pixelDelta().isNull() || event.phase() != Qt::NoScrollPhase ||
         event.device()->type() == QInputDevice::DeviceType::TouchPad;
}

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
  setAccessibleDescription(
      tr("The plan of the workshop. The list of things beside it does the same by keyboard."));
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
  layoutChanged();
}

void PlanView::setReport(std::shared_ptr<const audit::Report> report, bool is_current,
                         std::shared_ptr<const audit::Report> as_it_is) {
  report_ = std::move(report);
  report_is_current_ = is_current;
  states_.clear();
  changes_.clear();
  if (is_current && !preview_) settled_ = report_;
  if (is_current && !preview_ && as_it_is && report_) changes_ = changesBetween(*as_it_is, *report_);
  if (is_current && preview_ && settled_ && report_) changes_ = changesBetween(*settled_, *report_);
  faulty_.clear();
  if (report_) {
    for (const auto& station : report_->stations) states_[station.id] = stateOf(station, is_current);
    for (const auto& finding : report_->findings)
      if (finding.rule == kDrawingFault) faulty_.insert(finding.subject);
  }
  say();
  update();
}

void PlanView::showReach(std::shared_ptr<const audit::Reach> reach, bool is_current) {
  const bool same = reach_ && reach && reach_->reach() == reach;
  if (!reach) reach_.reset();
  if (reach && !same) reach_.emplace(std::move(reach), shown());
  reach_is_current_ = is_current;
  update();
}

void PlanView::setSupposed(planning::Suppositions suppositions) {
  suppositions_ = std::move(suppositions);
  update();
}

void PlanView::fit() {
  geometry::Box box = picture().bounds();
  if (box.empty()) box = {{0, 0}, {kFirstRoom_mm, kFirstRoom_mm * 0.7}};
  view_.fit(box, QSizeF(width() - kRuler_px, height() - kRuler_px), kMargin_px);
  view_.pan({kRuler_px, kRuler_px});
  update();
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
  const geometry::Box box = withWalksOf(id, item->bounds());
  const QRectF seen = QRectF(rect()).adjusted(kRuler_px, kRuler_px, 0, 0);
  const QRectF where = view_.toPixels(box);
  const bool is_large = std::max(where.width(), where.height()) > 24 || view_.pixelsPerMm() >= kNear;
  if (seen.contains(where) && is_large) return update();
  view_.fit(box.grown(2000), QSizeF(width(), height()), kMargin_px);
  update();
}

// What a station, or those of a machine, walk to its stop; the phone may be far off.
geometry::Box PlanView::withWalksOf(const std::string& id, geometry::Box box) const {
  if (!report_) return box;
  for (const auto& station : report_->stations)
    if (station.id == id || station.machine == id)
      for (const geometry::Point p : station.stop.path_m) box.add(1000 * p);
  return box;
}

geometry::Point PlanView::middle() const {
  return view_.toPlan(QPointF(width() / 2.0, height() / 2.0));
}

const Picture& PlanView::picture() const {
  if (!picture_) picture_.emplace(shown(), catalogue_.kinds, pictures_);
  return *picture_;
}

void PlanView::preview(std::optional<layout::Layout> layout) {
  if (!layout && !preview_) return;
  preview_ = layout ? std::make_shared<const layout::Layout>(std::move(*layout)) : nullptr;
  picture_.reset();
  emit previewed(preview_);
  update();
}

bool PlanView::commit(edits::Edit edit) {
  preview_.reset();
  picture_.reset();
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
  preview_.reset();
  picture_.reset();
  tool_->layoutChanged();
  if (never_fitted_ && isVisible()) fit();
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
  marks.stations = &states_;
  if (shows_grid_) {
    marks.grid = shown().unit;
    paintGrid(painter, view_, theme_, visible, shown().unit);
  }
  if (reach_) marks.on_floors = [this](QPainter& p) { reach_->paint(p, view_, theme_, reach_is_current_); };
  picture().paint(painter, view_, theme_, visible.adjusted(kRuler_px, kRuler_px, 0, 0), marks);
  paintFaults(painter);
  paintSupposed(painter, view_, theme_, shown(), suppositions_);
  paintRoutes(painter);
  if (reach_)
    reach_->paintLegend(painter, theme_, visible.adjusted(kRuler_px, kRuler_px, 0, 0), reach_is_current_);
  tool_->paintOver(painter);
  paintChanges(painter);
  paintScaleBar(painter, view_, theme_, visible.size(), shown().unit);
  paintRulers(painter, view_, theme_, visible.size(), shown().unit, pointer_);
}

// The walks of what is selected, as long as they are those of the layout shown.
void PlanView::paintRoutes(QPainter& painter) const {
  if (!report_ || !report_is_current_ || selection_.empty()) return;
  for (const auto& station : report_->stations) {
    if (!selection_.contains(station.id) && !selection_.contains(station.machine)) continue;
    paintRoute(painter, view_, theme_, station.phone, RouteTo::Phone, report_->unit);
    paintRoute(painter, view_, theme_, station.stop, RouteTo::Stop, report_->unit);
  }
}

// What a drag would change for whom: marked at each station, told beside the pointer.
void PlanView::paintChanges(QPainter& painter) const {
  for (const StationChange& change : changes_)
    if (const auto thing = edits::findThing(shown(), change.station))
      if (const auto at = edits::placeOf(shown(), *thing))
        paintTurn(painter, theme_, view_.toPixels(*at), change.turn);
  if (pointer_ && isDragging()) paintTag(painter, theme_, *pointer_ + QPointF(0, 24), tellsOfChanges());
}

QString PlanView::tellsOfChanges() const {
  constexpr std::size_t kMostTold = 5;
  QStringList told;
  for (std::size_t i = 0; i < std::min(changes_.size(), kMostTold); ++i) told << changes_[i].text;
  if (changes_.size() > kMostTold) told << tr("and %1 more").arg(changes_.size() - kMostTold);
  return told.join("\n");
}

void PlanView::paintFaults(QPainter& painter) const {
  for (const std::string& id : faulty_)
    if (const Item* item = picture().find(id); item && !item->bounds().empty())
      paintFaultMark(painter, theme_, view_.toPixels(item->bounds()).adjusted(-6, -6, 6, 6));
}

void PlanView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (never_fitted_) {
    never_fitted_ = false;
    fit();
  }
}

PointerEvent PlanView::pointerEvent(QPointF pixel, Qt::KeyboardModifiers modifiers) const {
  return {pixel, view_.toPlan(pixel), modifiers};
}

bool PlanView::pans(const QMouseEvent& event) const {
  return event.button() == Qt::MiddleButton || (event.button() == Qt::LeftButton && space_held_);
}

void PlanView::mousePressEvent(QMouseEvent* event) {
  if (pans(*event)) {
    panned_from_ = event->position();
    QWidget::setCursor(Qt::ClosedHandCursor);
  } else if (event->button() == Qt::LeftButton && !takesHold(*event)) {
    tool_->pressed(pointerEvent(event->position(), event->modifiers()));
  }
}

// Of something that stands in the way by supposition.
bool PlanView::takesHold(const QMouseEvent& event) {
  if (choice_.what != Choice::What::Select) return false;
  const geometry::Point at = view_.toPlan(event.position());
  const auto index = inTheWayAt(suppositions_, at);
  if (index) held_ = Held{*index, at - suppositions_.in_the_way[*index].at};
  return index.has_value();
}

void PlanView::mouseMoveEvent(QMouseEvent* event) {
  pointer_ = event->position();
  if (held_ && held_->index < suppositions_.in_the_way.size()) {
    suppositions_.in_the_way[held_->index].at = view_.toPlan(event->position()) - held_->grip;
    emit supposed(suppositions_);
    return update();
  }
  if (panned_from_) {
    view_.pan(event->position() - *panned_from_);
    panned_from_ = event->position();
  } else {
    const auto at = pointerEvent(event->position(), event->modifiers());
    const Item* item = picture().itemAt(at.at, view_.mmPerPixel(), kHit_px);
    hovered_ = item ? item->id : "";
    tool_->moved(at);
    say();
  }
  update();
}

void PlanView::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && held_) return held_.reset();
  if (panned_from_ && (event->button() == Qt::MiddleButton || event->button() == Qt::LeftButton)) {
    panned_from_.reset();
    showCursor();
  } else if (event->button() == Qt::LeftButton) {
    tool_->released(pointerEvent(event->position(), event->modifiers()));
  }
}

void PlanView::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton)
    tool_->doubleClicked(pointerEvent(event->position(), event->modifiers()));
}

void PlanView::contextMenuEvent(QContextMenuEvent* event) {
  if (choice_.what != Choice::What::Select) return choose({});
  if (event->reason() == QContextMenuEvent::Mouse) {
    const Item* item = picture().itemAt(view_.toPlan(event->pos()), view_.mmPerPixel(), kHit_px);
    if (item && !selection_.contains(item->id)) selection_.set(item->id);
  }
  emit menuWanted(event->globalPos());
}

void PlanView::wheelEvent(QWheelEvent* event) {
  const bool zooms = event->modifiers() & Qt::ControlModifier || !isTouchpad(*event);
  if (zooms) {
    view_.zoomAt(event->position(), std::pow(kZoomANotch, event->angleDelta().y() / kNotch));
  } else {
    view_.pan(event->pixelDelta().isNull() ? QPointF(event->angleDelta()) / 4 : QPointF(event->pixelDelta()));
  }
  event->accept();
  update();
}

bool PlanView::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && beginsNumber(*static_cast<QKeyEvent*>(event)))
    event->accept();
  if (event->type() != QEvent::NativeGesture) return QWidget::event(event);
  const auto* gesture = static_cast<QNativeGestureEvent*>(event);
  if (gesture->gestureType() != Qt::ZoomNativeGesture) return false;
  view_.zoomAt(gesture->position(), 1 + gesture->value());
  update();
  return true;
}

void PlanView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    space_held_ = true;
    QWidget::setCursor(Qt::OpenHandCursor);
    return;
  }
  if (tool_->key(*event)) return;
  switch (event->key()) {
    case Qt::Key_Escape:
      if (!tool_->cancel() && choice_.what != Choice::What::Select) choose({});
      return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      tool_->accept();
      return;
    default:
      break;
  }
  if (beginsNumber(*event)) return entry_->type(event->text());
  QWidget::keyPressEvent(event);
}

// A digit is the fit shortcut, or the beginning of a length where one is being drawn.
bool PlanView::beginsNumber(const QKeyEvent& event) const {
  const QString text = event.text();
  return text.size() == 1 && (text[0].isDigit() || text == "-" || text == ".") && !tool_->fields().empty() &&
         !(event.modifiers() & ~Qt::KeypadModifier);
}

void PlanView::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Space || event->isAutoRepeat()) return QWidget::keyReleaseEvent(event);
  letGoOfSpace();
}

// The key may be let go of elsewhere.
void PlanView::focusOutEvent(QFocusEvent* event) {
  if (space_held_) letGoOfSpace();
  QWidget::focusOutEvent(event);
}

void PlanView::letGoOfSpace() {
  space_held_ = false;
  if (!panned_from_) showCursor();
}

void PlanView::showCursor() {
  QWidget::setCursor(choice_.what == Choice::What::Select ? Qt::ArrowCursor : Qt::CrossCursor);
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

void PlanView::say() {
  QString sentence;
  if (const auto thing = hovered_.empty() ? std::nullopt : edits::findThing(shown(), hovered_))
    sentence = describe(shown(), catalogue_.kinds, *thing, report_.get()) + "   ";
  emit said(sentence + tool_->prompt());
}

}  // namespace stopwalk::plan

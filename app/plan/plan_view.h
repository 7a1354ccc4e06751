#pragma once

#include <QTimer>
#include <QWidget>
#include <memory>
#include <optional>

#include "app/plan/audit_marks.h"
#include "app/plan/choice.h"
#include "app/plan/inspection_layer.h"
#include "app/plan/reach_layer.h"
#include "app/plan/tools/tool.h"
#include "core/audit/report.h"
#include "core/planning/suppositions.h"

namespace stopwalk::plan {

class NumberEntry;

// The plan on the screen: painted, zoomed, panned, and changed by the tool that is chosen.
//
// The wheel zooms about the pointer, a touchpad's two fingers pan, pinching zooms; Space and drag or the
// middle button pan.
class PlanView : public QWidget, private ToolHost {
  Q_OBJECT

 public:
  PlanView(edits::EditedLayout& edited, edits::Selection& selection, Catalogue catalogue,
           QWidget* parent = nullptr);
  ~PlanView() override;

  const Choice& choice() const { return choice_; }
  void choose(const Choice& choice);
  // What there is to draw, and the folder of the layout, where its pictures are.
  void setSources(Catalogue catalogue, const QString& folder);

  // How each station stands; `is_current` says whether it was found for the layout that is shown. With
  // `as_it_is`, the report is of what is supposed, and what that changes is marked. `narrow_places` of the
  // report's layout; none: walks are shown without where they are narrow.
  void setReport(std::shared_ptr<const audit::Report> report, bool is_current,
                 std::shared_ptr<const audit::Report> as_it_is = nullptr,
                 std::shared_ptr<const floor::NarrowPlaces> narrow_places = nullptr);
  // What the finding measured is drawn over the plan, as long as there is one like it; none: nullptr.
  void lookAt(const audit::Finding* finding);
  // Drawn over the plan; what stands in the way is dragged there.
  void setSupposed(planning::Suppositions suppositions);

  // Devices that failed and have not passed since: each bears the cross of one that is out of order.
  void setFailed(std::vector<std::string> devices);

  // The reach map on the floors, with its legend; none: not shown. One that is not of the layout shown is
  // painted pale and says so.
  void showReach(std::shared_ptr<const ReachLayer> reach, bool is_current);
  const ReachLayer* reach() const { return reach_.get(); }
  bool isReachCurrent() const { return reach_ && reach_is_current_; }
  // Where its legend was painted last.
  QRectF reachLegend() const { return legend_; }

  // In the place of how stations stand, what the inspection records say of devices; none: stations again.
  void showInspected(std::optional<InspectedOnPlan> inspected);

  // Another layout is shown than there is: something is being dragged or drawn.
  bool isPreviewing() const { return preview_ != nullptr; }
  // What stands in the way by supposition is held by the pointer, and is not yet where it will be.
  bool isHolding() const { return held_ && held_->index < suppositions_.in_the_way.size(); }
  void fit();
  void zoomBy(double factor);
  // Puts down what is being dragged, where it is.
  void endDrag();
  void showGrid(bool shows);
  // Brings a thing into sight.
  void goTo(const std::string& id);
  // The same without coming nearer: the whole plan, unless it is in sight.
  void bringIntoSight(const std::string& id);
  // The place in the middle of what is seen: where things go that come without a pointer.
  geometry::Point middle() const;
  // What a drag that is going on changes, a line for each station, as painted beside the pointer: so many
  // that most of the plan stays in sight.
  QString tellsOfChanges() const;
  // Where the records are shown: what a device is and what its last check came to; of others empty. As
  // painted beside the pointer.
  QString tellsOfCheck(const std::string& id) const;
  // Whether that, and how stations stand, was found for the layout that is shown.
  bool isAudited() const { return marks_.isCurrent(); }
  const ViewTransform& transform() const { return view_; }
  AsSeen asSeen() const { return {view_, theme_, size(), devicePixelRatioF()}; }

  QSize sizeHint() const override { return {900, 640}; }
  QSize minimumSizeHint() const override { return {320, 240}; }

 signals:
  void chosen(const Choice& choice);  // another tool than before
  void said(const QString& sentence);
  // What is shown while dragging, to be audited; none: the layout as it is.
  void previewed(std::shared_ptr<const layout::Layout> layout);
  void menuWanted(const QPoint& global);
  // Of what stands in the way, this was clicked or is about to be dragged.
  void tookHold(const std::string& block);
  // What stands in the way was dragged elsewhere, or put down there.
  void supposed(const stopwalk::planning::Suppositions& suppositions);

 protected:
  void paintEvent(QPaintEvent*) override;
  void resizeEvent(QResizeEvent*) override;
  void mousePressEvent(QMouseEvent*) override;
  void mouseMoveEvent(QMouseEvent*) override;
  void mouseReleaseEvent(QMouseEvent*) override;
  void mouseDoubleClickEvent(QMouseEvent*) override;
  void contextMenuEvent(QContextMenuEvent*) override;
  void wheelEvent(QWheelEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  void keyReleaseEvent(QKeyEvent*) override;
  void focusOutEvent(QFocusEvent*) override;
  void leaveEvent(QEvent*) override;
  void changeEvent(QEvent*) override;
  bool event(QEvent*) override;

 private:
  // ToolHost
  const layout::Layout& layout() const override { return edited_.layout(); }
  edits::Selection& selection() override { return selection_; }
  const Catalogue& catalogue() const override { return catalogue_; }
  const Picture& picture() const override;
  const ViewTransform& view() const override { return view_; }
  const Theme& theme() const override { return theme_; }
  void preview(std::optional<layout::Layout> layout) override;
  bool commit(edits::Edit edit) override;
  void repaint() override { paintSoon(); }
  void fieldsChanged() override;
  void finished() override;
  void setCursor(Qt::CursorShape shape) override { QWidget::setCursor(shape); }

  PointerEvent pointerEvent(QPointF pixel, Qt::KeyboardModifiers modifiers) const;
  const layout::Layout& shown() const { return preview_ ? *preview_ : edited_.layout(); }
  std::shared_ptr<const layout::Layout> snapshot() const { return preview_ ? preview_ : edited_.snapshot(); }
  void layoutChanged();
  std::vector<std::string> failedUnmarked(const std::vector<std::string>& with_own_sign) const;
  QRectF reachLegendIn(const QRectF& visible);
  void paintSoon();
  void say();
  void describeForReaders();
  void showCursor();
  void letGoOfSpace();
  bool pans(const QMouseEvent& event) const;
  bool beginsNumber(const QKeyEvent& event) const;
  void placeEntry();
  void showGrowth(const geometry::Box& before);
  void keepInSight();
  bool takesHold(const QMouseEvent& event);
  bool bringsBack();
  void putDown();

  edits::EditedLayout& edited_;
  edits::Selection& selection_;
  Catalogue catalogue_;
  Pictures pictures_;
  Theme theme_;
  ViewTransform view_;
  ViewTransform fitted_;  // as it was when all of the plan was last brought into sight
  bool never_fitted_ = true;
  bool shows_grid_ = true;

  std::shared_ptr<const layout::Layout> preview_;
  QTimer patience_;               // while it runs, a preview waits for its audit, to be painted with it ...
  bool audits_are_late_ = false;  // ... unless the last did so in vain
  // Made when it is asked for; where that is another layout than is shown, it is made anew from it.
  struct Drawn {
    std::shared_ptr<const layout::Layout> shown, layout;  // that is drawn of it
    Picture picture;
  };
  mutable std::optional<Drawn> drawn_;

  Choice choice_;
  std::unique_ptr<Tool> tool_;
  NumberEntry* entry_;

  AuditMarks marks_;
  std::shared_ptr<const ReachLayer> reach_;
  bool reach_is_current_ = false;
  // The place of its legend, and for what it was sought.
  struct LegendSought {
    ViewTransform view;
    QRectF visible;
    std::shared_ptr<const layout::Layout> layout;
    std::shared_ptr<const ReachLayer> reach;
    bool operator==(const LegendSought&) const = default;
  };
  LegendSought legend_sought_;
  LegendPlace legend_place_;
  QRectF legend_;
  std::optional<InspectionLayer> inspection_;

  planning::Suppositions suppositions_;
  std::vector<std::string> failed_;
  struct Held {
    std::size_t index = 0;  // of what stands in the way
    geometry::Point grip;   // from its middle
    geometry::Point was;
  };
  std::optional<Held> held_;

  std::optional<QPointF> pointer_;
  std::string hovered_;
  bool space_held_ = false;
  std::optional<QPointF> panned_from_;
};

}  // namespace stopwalk::plan

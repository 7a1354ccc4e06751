#pragma once

#include <QPainter>
#include <QPointF>
#include <QString>
#include <optional>
#include <vector>

#include "app/edits/add_things.h"
#include "app/edits/edited_layout.h"
#include "app/edits/selection.h"
#include "app/plan/catalogue.h"
#include "app/plan/picture.h"
#include "app/plan/snap.h"
#include "app/plan/theme.h"
#include "app/plan/view_transform.h"

class QKeyEvent;

// The pointer's modes on the plan, a file each. A tool shows what it would do as a preview, and commits it as
// one edit.
namespace stopwalk::plan {

// What a tool has at hand.
class ToolHost {
 public:
  virtual ~ToolHost() = default;
  virtual const layout::Layout& layout() const = 0;  // as it is, without any preview
  virtual edits::Selection& selection() = 0;
  virtual const Catalogue& catalogue() const = 0;
  virtual const Picture& picture() const = 0;  // of what is shown
  virtual const ViewTransform& view() const = 0;
  virtual const Theme& theme() const = 0;

  // Shows another layout instead, until the next preview or commit; none: the layout as it is.
  virtual void preview(std::optional<layout::Layout> layout) = 0;
  virtual bool commit(edits::Edit edit) = 0;  // whether it changed anything
  virtual void repaint() = 0;
  // The tool's fields have other values or names: the person sees and types them beside the plan.
  virtual void fieldsChanged() = 0;
  // The tool is through: back to picking things.
  virtual void finished() = 0;
  virtual void setCursor(Qt::CursorShape shape) = 0;
};

struct PointerEvent {
  QPointF pixel;
  geometry::Point at;  // in the plan
  Qt::KeyboardModifiers modifiers = Qt::NoModifier;
  bool snaps() const { return !(modifiers & Qt::AltModifier); }
  bool adds() const { return modifiers & (Qt::ShiftModifier | Qt::ControlModifier); }
};

// A number that may be typed while drawing.
struct Field {
  enum class Kind { Length, Angle };
  QString name;
  Kind kind = Kind::Length;
  double value = 0;    // mm or degrees
  bool typed = false;  // by the person: the pointer does not change it any more
};

class Tool {
 public:
  explicit Tool(ToolHost& tool_host) : host(tool_host) {}
  virtual ~Tool() = default;
  Tool(const Tool&) = delete;
  Tool& operator=(const Tool&) = delete;

  virtual void pressed(const PointerEvent&) {}
  virtual void moved(const PointerEvent&) {}  // with or without the button
  virtual void released(const PointerEvent&) {}
  virtual void doubleClicked(const PointerEvent&) {}
  virtual bool key(QKeyEvent&) { return false; }  // whether it was for the tool
  virtual void paintOver(QPainter&) const {}

  // What it expects next, as a sentence.
  virtual QString prompt() const = 0;
  virtual std::vector<Field> fields() const { return {}; }
  virtual void setField(std::size_t, double) {}
  virtual void accept() {}                 // Enter: done with the numbers as they are
  virtual bool cancel() { return false; }  // Escape: whether there was something to leave
  virtual void layoutChanged() {}          // by whatever; what was held may be there no more

 protected:
  // What the tool is for: the new thing is picked, and the tool is through. Where it cannot be, it goes on.
  void add(edits::Added added) {
    if (!host.commit(std::move(added.edit))) return;
    host.selection().set(added.id);
    host.finished();
  }

  ToolHost& host;
};

}  // namespace stopwalk::plan

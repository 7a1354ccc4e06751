#include "app/plan/tools/place_tool.h"

#include <QKeyEvent>
#include <cmath>

#include "app/plan/guides.h"
#include "app/plan/pointing.h"
#include "app/plan/tools/placing.h"

namespace stopwalk::plan {
namespace {

constexpr double kTurnStep_deg = 15;

std::string lastSelected(ToolHost& host) {
  return host.selection().empty() ? "" : host.selection().ids().back();
}

}  // namespace

PlaceTool::PlaceTool(Choice choice, ToolHost& tool_host)
    : Tool(tool_host),
      choice_(std::move(choice)),
      targets_(tool_host.layout(), {}),
      fields_{{tr("X")}, {tr("Y")}} {
  if (turns()) fields_.push_back({tr("Turn"), Field::Kind::Angle});
}

bool PlaceTool::turns() const {
  return choice_.what == Choice::What::Machine || choice_.what == Choice::What::Fixture;
}

void PlaceTool::follow(const PointerEvent& event) {
  guides_.clear();
  pulled_ = event.snaps();
  Snap snap;
  if (event.snaps() && turns()) {
    const double turn = fields_[Turn].value;
    layout::Footprint footprint = fixtureSize(choice_.key);
    if (const auto* t = host.catalogue().templates.find(choice_.key)) footprint = t->footprint;
    snap =
        targets_.pull(referencesOf(footprint, event.at, turn), kSnap_px * host.view().mmPerPixel(), kGrid_mm);
  } else if (event.snaps()) {
    snap = targets_.pull({event.at}, kSnap_px * host.view().mmPerPixel(), kGrid_mm);
  }
  guides_ = std::move(snap.guides);
  const geometry::Point at = event.at + snap.by;
  if (!fields_[X].typed) fields_[X].value = at.x;
  if (!fields_[Y].typed) fields_[Y].value = at.y;
  show();
}

void PlaceTool::show() {
  const auto added = put(choice_, host.layout(), host.catalogue(), {fields_[X].value, fields_[Y].value},
                         turns() ? fields_[Turn].value : 0, lastSelected(host), pulled_);
  host.preview(added ? std::optional(added->edit.after) : std::nullopt);
  host.fieldsChanged();
  host.repaint();
}

void PlaceTool::turnBy(double deg) {
  if (!turns()) return;
  setField(Turn, std::fmod(fields_[Turn].value + deg + 360, 360));
}

void PlaceTool::moved(const PointerEvent& event) {
  follow(event);
}

void PlaceTool::pressed(const PointerEvent& event) {
  follow(event);
  accept();
}

bool PlaceTool::key(QKeyEvent& event) {
  if (event.key() != Qt::Key_R || event.modifiers() & ~Qt::ShiftModifier || !turns()) return false;
  turnBy(event.modifiers() & Qt::ShiftModifier ? -kTurnStep_deg : kTurnStep_deg);
  return true;
}

void PlaceTool::paintOver(QPainter& painter) const {
  paintGuides(painter, host.view(), host.theme(), guides_);
}

QString PlaceTool::prompt() const {
  using What = Choice::What;
  switch (choice_.what) {
    case What::Machine:
    case What::Fixture:
      return tr("Click where it stands, or type its place and turn. R turns it by 15°.");
    case What::Door:
      return tr("Click the wall where the door goes.");
    case What::Station:
      return tr("Click where the person stands at the machine.");
    case What::Device:
      return tr("Click the machine's side or the wall that carries it.");
    case What::Phone:
      return tr("Click the wall where the phone hangs.");
    default:
      return "";
  }
}

void PlaceTool::setField(std::size_t field, double value) {
  fields_[field].value = value;
  fields_[field].typed = true;
  show();
}

void PlaceTool::accept() {
  auto added = put(choice_, host.layout(), host.catalogue(), {fields_[X].value, fields_[Y].value},
                   turns() ? fields_[Turn].value : 0, lastSelected(host), pulled_);
  if (added) add(std::move(*added));
}

bool PlaceTool::cancel() {
  host.preview(std::nullopt);
  return false;
}

}  // namespace stopwalk::plan

#include "app/plan/tools/tools.h"

#include "app/plan/tools/note_tool.h"
#include "app/plan/tools/outline_tool.h"
#include "app/plan/tools/place_tool.h"
#include "app/plan/tools/room_tool.h"
#include "app/plan/tools/scale_tool.h"
#include "app/plan/tools/select_tool.h"
#include "app/plan/tools/tape_tool.h"

namespace stopwalk::plan {

std::unique_ptr<Tool> makeTool(const Choice& choice, ToolHost& host) {
  using What = Choice::What;
  switch (choice.what) {
    case What::Select:
      return std::make_unique<SelectTool>(host);
    case What::Room:
      return std::make_unique<RoomTool>(host);
    case What::RoomByCorners:
      return std::make_unique<OutlineTool>(host);
    case What::Note:
      return std::make_unique<NoteTool>(host);
    case What::TapeCheck:
      return std::make_unique<TapeTool>(host);
    case What::ScaleUnderlay:
      return std::make_unique<ScaleTool>(host);
    case What::Door:
    case What::Fixture:
    case What::Machine:
    case What::Station:
    case What::Device:
    case What::Phone:
      return std::make_unique<PlaceTool>(choice, host);
  }
  return std::make_unique<SelectTool>(host);
}

}  // namespace stopwalk::plan

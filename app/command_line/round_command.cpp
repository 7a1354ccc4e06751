#include "app/command_line/round_commands.h"

namespace stopwalk::app {

void addRound(CLI::App& program, Session& session) {
  CLI::App& c =
      *program.add_subcommand("round", "Inspection rounds: open one, record checks, see what is due");
  c.require_subcommand(1);
  setExample(
      c,
      "stopwalk round new shop.layout.yaml --by \"Ada Example\"\n"
      "  stopwalk round record shop.layout.yaml --round 1 --device lathe-1/bar --result pass\n"
      "  stopwalk round due shop.layout.yaml\n"
      "  stopwalk round sheet shop.layout.yaml --due --out round.pdf\n"
      "  stopwalk round bundle shop.layout.yaml --from 2026-01-01 --to 2026-12-31 --out records.pdf\n\n"
      "Records are lines added to shop.inspections.jsonl beside the layout, and never changed. Test a "
      "stop only\n"
      "as its maker and the shop's procedure say, with the work clear.");
  addRoundNew(c, session);
  addRoundRecord(c, session);
  addRoundSheet(c, session);
  addRoundShow(c, session);
  addRoundDue(c, session);
  addRoundVerify(c, session);
  addRoundBundle(c, session);
}

}  // namespace stopwalk::app

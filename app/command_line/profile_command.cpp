#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/output.h"
#include "app/command_line/profiles.h"
#include "core/audit/profile.h"
#include "core/audit/rules_document.h"
#include "core/files/profile_reader.h"
#include "core/files/profile_writer.h"

namespace stopwalk::app {
namespace {

Exit list(Session& session) {
  std::string text;
  for (const std::string& id : files::bundledProfiles()) {
    const audit::Profile profile = *files::bundledProfile(id);
    text += id + std::string(id.size() < 16 ? 16 - id.size() : 1, ' ') + profile.name;
    text += (profile.extends.empty() ? "" : " (extends " + profile.extends + ")") + "\n";
  }
  return writeResult(text, "", session);
}

Exit show(const std::string& name, Session& session) {
  const ChosenProfile chosen = chooseProfile(name, session);
  return chosen.profile ? writeResult(files::writeProfile(*chosen.profile), "", session) : chosen.exit;
}

}  // namespace

void addProfile(CLI::App& program, Session& session) {
  CLI::App& c = *program.add_subcommand("profile", "Rule profiles: which rules apply, at which limits");
  c.require_subcommand(1);
  setExample(c, "stopwalk profile show teaching-shop");

  CLI::App& all = *c.add_subcommand("list", "Name the bundled profiles");
  setExample(all, "stopwalk profile list");
  all.callback([&session] { session.command = [&session] { return list(session); }; });

  const auto name = std::make_shared<std::string>();
  CLI::App& one = *c.add_subcommand("show", "Print a profile with everything it inherits, as a profile file");
  one.add_option("NAME", *name, "A bundled profile or a profile file")
      ->required()
      ->check(saysSomething("the name of a profile"));
  setExample(one, "stopwalk profile show strict > ours.yaml");
  one.callback([name, &session] { session.command = [name, &session] { return show(*name, session); }; });

  CLI::App& rules = *c.add_subcommand("rules", "Print what each rule finds, and why (docs/rules.md)");
  setExample(rules, "stopwalk profile rules");
  rules.callback([&session] {
    session.command = [&session] { return writeResult(audit::rulesDocument(), "", session); };
  });
}

}  // namespace stopwalk::app

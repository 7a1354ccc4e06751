#include "core/audit/rules_document.h"

#include "core/audit/profile.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::string limitsText(const Rule& rule) {
  std::vector<std::string> texts;
  for (const Limit& l : rule.limits) {
    std::string text = decimal(l.value, 3) + (l.unit.empty() ? "" : " " + l.unit);
    texts.push_back(rule.limits.size() == 1 ? text : text + " (`" + rule.id + "." + l.name + "`)");
  }
  return texts.empty() ? "none" : listed(texts, 9);
}

std::string paragraphs(const Rule& rule) {
  return "## " + rule.id + "\n\nFinds " + rule.finds + ".\n\n" + rule.meaning +
         "\n\nTo mend it: " + rule.mend + "\n\n* Severity: " + std::string(word(rule.severity)) +
         "\n* Limit: " + limitsText(rule) + "\n* Basis: " + basisText(rule.basis) + "\n";
}

}  // namespace

std::string rulesDocument() {
  std::string text =
      "# Rules of the audit\n\n"
      "Written from the rules themselves by `stopwalk profile rules`; a test holds this file to them. The "
      "values are those of the\n"
      "profile `teaching-shop`; another profile, or `--limit RULE=VALUE`, may change them. Lengths are in "
      "metres, times in seconds.\n"
      "`published` names the source; what has none that was seen is common practice, and what this program's "
      "makers chose is a\n"
      "house rule.\n\n"
      "| Rule | Severity | Limit | Finds |\n|---|---|---|---|\n";
  for (const Rule* rule : rules())
    text += "| [" + rule->id + "](#" + rule->id + ") | " + std::string(word(rule->severity)) + " | " +
            limitsText(*rule) + " | " + rule->finds + " |\n";
  for (const Rule* rule : rules()) text += "\n" + paragraphs(*rule);
  return text;
}

}  // namespace stopwalk::audit

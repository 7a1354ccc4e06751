#include "app/rounds/counting.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/rounds/reasons.h"

namespace stopwalk::rounds {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::Counting)
};

QStringList whatItIsNot(const inspection::Check& said, bool is_stop, const inspection::ShortOfPass* pass,
                        const layout::Layout& layout) {
  const auto* not_counted = pass && pass->not_counted ? &*pass->not_counted : nullptr;
  const bool is_doubted = not_counted && not_counted->why != inspection::Doubt::NotNamed;
  QStringList said_of_it;
  if (!is_doubted && !(is_stop ? inspection::passedPressed(said) : inspection::passedSeen(said)))
    said_of_it << (is_stop ? Words::tr("only looked at") : Words::tr("not looked at"));
  else if (not_counted)
    said_of_it
        << Words::tr("not counted: %1").arg(reasonText(*not_counted, namesOf(layout, not_counted->machines)));
  if (pass && pass->left_open && pass->left_open != inspection::LeftOpen::InDoubt)
    said_of_it
        << Words::tr("leaves the failure open: %1").arg(reasonText(*pass, namesOf(layout, pass->not_named)));
  return said_of_it;
}

}  // namespace

Counting::Counting(const inspection::OnRecord& records, const layout::Layout& layout) {
  const auto short_passes = records.passesShort();
  for (const inspection::CheckChain& chain : records.chains()) {
    const inspection::Check& said = chain.said();
    if (said.result != inspection::Result::Pass) continue;
    const bool is_stop = inspection::isOfStop(chain, records.now(said.device));
    const auto pass = short_passes.find(said.number);
    passes_[said.number] =
        whatItIsNot(said, is_stop, pass == short_passes.end() ? nullptr : &pass->second, layout)
            .join(Words::tr("; "));
  }
}

QString Counting::but(const inspection::Check& check) const {
  const auto pass = passes_.find(check.number);
  return pass == passes_.end() || check.result != inspection::Result::Pass ? QString() : pass->second;
}

plan::CheckSign Counting::sign(const inspection::Check& check) const {
  switch (check.result) {
    case inspection::Result::Fail:
      return plan::CheckSign::Failed;
    case inspection::Result::NotTested:
      return plan::CheckSign::NotTested;
    case inspection::Result::NotAccessible:
      return plan::CheckSign::NotReached;
    case inspection::Result::Pass:
      break;
  }
  const auto pass = passes_.find(check.number);
  return pass != passes_.end() && pass->second.isEmpty() ? plan::CheckSign::Passed : plan::CheckSign::Short;
}

}  // namespace stopwalk::rounds

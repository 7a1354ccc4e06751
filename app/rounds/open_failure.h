#pragma once

#include <QString>

#include "core/inspection/schedule.h"

// Failures that nothing has closed, as a round shows them.
namespace stopwalk::rounds {

// Since when, and what would close it.
QString openFailureText(const inspection::FailedDevice& failed, const inspection::Schedule& schedule);
// Why the device of a check that passed, and is among the records, is failed all the same; empty: it is not.
QString whyStillFailed(const inspection::Check& passed, const inspection::Records& records,
                       const inspection::Schedule& schedule, const inspection::AsOf& as_of);

// Why a failed device is so though it was recorded that it was taken away.
QString whyStillAsked(const inspection::FailedDevice& failed);

}  // namespace stopwalk::rounds

#pragma once

#include <QString>

#include "app/records/append_record.h"
#include "app/rounds/round_under_way.h"
#include "core/planning/inspected_devices.h"

namespace stopwalk::rounds {

// Why a record is not, or not surely, on the disk, and what to do about it; of one that is, empty.
QString whyNotRecorded(const records::Appended& appended, const QString& records_file);
// That something unfinished was set aside; empty: there was nothing.
QString setAside(const records::Appended& appended);

}  // namespace stopwalk::rounds

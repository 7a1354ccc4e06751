#pragma once

#include <QString>

#include "app/records/append_record.h"
#include "core/inspection/check_rules.h"

namespace stopwalk::rounds {

// Why a record is not, or not surely, on the disk, and what to do about it; of one that is, empty.
QString whyNotRecorded(const records::Appended& appended, const QString& records_file);
// Why a check cannot correct the one of that number, and what to do about it.
QString whyNotCorrected(const inspection::CorrectionFault& fault, std::size_t corrects);
// That something unfinished was set aside; empty: there was nothing.
QString setAside(const records::Appended& appended);

}  // namespace stopwalk::rounds

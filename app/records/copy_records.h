#pragma once

#include <string>

#include "app/records/append_record.h"

namespace stopwalk::records {

struct Copied {
  Written written = Written::No;  // Unsure: it stands there, and might not survive a power cut
  std::string why;                // unless Yes: the system's words, or who holds one of the logs
};

// Puts a copy of the log `from` at `to`, byte for byte, or leaves what is there: a log that stands there is
// never written over.
Copied copyRecords(const std::string& from, const std::string& to,
                   std::chrono::milliseconds wait = kPatience);

}  // namespace stopwalk::records

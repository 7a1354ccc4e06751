#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/inspection_record_json.h"

// What a text that is no JSON, or not wholly, says of failures: the last resort, for a failure counts
// whatever the doubt. It is read by its keys alone, which no text that somebody typed is taken for, since its
// quotes are escaped there; only where no device has a key, the word `fail` in quotes is one, even a note.
namespace stopwalk::files {

// Whether a result in it is a failure, cut off within that word or not.
bool saysFail(std::string_view text);
// Whether something failed whose device has no key, or no id: `failuresIn` is to be asked with those that are
// known.
bool wantsKnown(std::string_view text);

// Each device without another result that can be read has failed: its results are those behind it up to the
// next device, and those before the first. Where none has a key and something failed, each of the `known` ids
// that stand there; and each that stands in what is no id.
std::vector<ReadRecord> failuresIn(std::string_view text, const std::set<std::string>& known = {});

}  // namespace stopwalk::files

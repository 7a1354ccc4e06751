#pragma once

#include <memory>
#include <string>
#include <vector>

namespace stopwalk::layout {

// One key of a thing as the file had it.
struct KeptEntry {
  std::string key;
  bool known = true;      // one of the program's: its value comes from the thing
  std::string before;     // the lines of comments and the empty lines above it, without indent
  std::string header;     // the comment on the line of the key, where the value begins below
  std::string source;     // all that stood after the colon; further lines are indented relative to the key
  std::string canonical;  // what the program would have written: `source` holds for as long as it still would
  std::string after;      // the comment behind the value
  std::string extra;      // unknown keys within the value, as they go into a map in braces
};

struct KeptText {
  bool flow = false;  // in braces
  int unit = 0;       // the file's unit: `source` holds in no other
  std::vector<KeptEntry> entries;
  std::string before;  // above an item of a list, as in an entry
  std::string after;   // behind an item in braces
  std::string tail;    // below the last entry of a file
};

// What the file said of one thing beyond the values the program uses: unknown keys, the order of its keys,
// comments, the spelling of its values. Carried by the thing itself, so that copying, moving or renaming it
// loses nothing on save. Absent where the thing was written just as the program writes it, or not read at
// all.
struct Kept {
  std::shared_ptr<const KeptText> text;

  // Two things are equal that hold the same unknown keys: they are values, if of another program. Order,
  // comments and spelling are not.
  bool operator==(const Kept& other) const;
};

}  // namespace stopwalk::layout

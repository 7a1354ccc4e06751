#pragma once

#include <QString>
#include <functional>
#include <ostream>
#include <string>

// Makes calls to the system fail, or the program stop at them. The functions of the C library that write to
// files are defined anew in this program (faults.cpp), in front of those that Qt and the rest would else use.
namespace stopwalk::documents {

enum class Manner {
  FailOnce,  // of a failed sync the bytes are lost, whatever comes after
  FailEverAfter,
  WriteShort,     // half of what a write was given; other calls are left alone
  Stop,           // the process is no more; a write has written half
  PowerCutKept,   // the same, and of every file that was not synced half is lost
  PowerCutUndone  // and what was made, renamed or removed in folders that were not synced is as before
};

struct Fault {
  int at = 0;  // which call, from 1; 0: none
  Manner manner = Manner::FailOnce;
  int error = 0;
  bool named_temporary = false;  // as on file systems that have no files without a name
};

// One kind of fault, for a test that puts it at each call in turn.
struct FaultCase {
  const char* name;
  Manner manner;
  int error;
  bool named_temporary;

  Fault at(int call) const { return {call, manner, error, named_temporary}; }
};
inline std::ostream& operator<<(std::ostream& out, const FaultCase& c) {
  return out << c.name;
}

inline constexpr int kStopped = 90;

struct FaultyRun {
  int status = 0;        // what `run` returned in its process; kStopped: the fault ended it
  int calls = 0;         // to watched functions, of files under the folder
  bool reached = false;  // the call of the fault was made
  std::string call;      // the one that failed
};

// Runs in a process of its own, with the fault in all that happens under `folder`. A power cut whose call is
// not reached happens at the end.
FaultyRun runWithFault(const QString& folder, const Fault& fault, const std::function<int()>& run);

}  // namespace stopwalk::documents

#pragma once

#include <QString>
#include <optional>
#include <string>

#include "app/documents/trouble.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/diagnostic.h"
#include "core/layout/layout.h"

// Opening and saving. Plain values in, plain values out, so that both may run on any thread; docs/files.md
// says what is promised.
namespace stopwalk::documents {

struct OpenResult {
  QString path;                        // as asked for
  files::Result<layout::Layout> read;  // the value, and what the reader had to say
  std::string sha256;                  // of the bytes that the value was read from; empty without a value
  std::optional<Trouble> trouble;      // whenever there is no value
};

OpenResult openLayout(const QString& path, const layout::DeviceKinds& kinds = files::bundledDeviceKinds());

struct SaveRequest {
  QString path;
  layout::Layout layout;
  std::string
      base_sha256;         // of the file as it was read or last saved; empty: the path is new to the document
  bool overwrite = false;  // whatever layout stands there now
};

enum class SaveOutcome {
  Saved,
  Unsure,          // in place, but it could not be made sure that it survives a power cut: save again
  ChangedOnDisk,   // not written: another program wrote the file since
  AlreadyThere,    // not written: another layout is at the new path
  NotALayout,      // not written: what is there could not be read as a layout; `overwrite` does not help
  WriteProtected,  // not written: the file may not be written to; `overwrite` does not help
  Unwritable,      // not written: the layout would not open again, see the trouble
  Failed           // not written
};

struct SaveResult {
  QString path;
  SaveOutcome outcome = SaveOutcome::Failed;
  std::string sha256;              // of the new file, when it stands in place
  std::optional<Trouble> trouble;  // unless Saved

  bool inPlace() const { return outcome == SaveOutcome::Saved || outcome == SaveOutcome::Unsure; }
};

// After anything but Saved and Unsure the old file is whole and as it was. Writes what a link leads to.
SaveResult saveLayout(const SaveRequest& request,
                      const layout::DeviceKinds& kinds = files::bundledDeviceKinds());

}  // namespace stopwalk::documents

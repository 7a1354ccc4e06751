#include "app/documents/layout_file.h"

#include <algorithm>

#include "app/documents/file_bytes.h"
#include "app/documents/safe_write.h"
#include "app/documents/words.h"
#include "core/files/layout_reader.h"
#include "core/files/layout_writer.h"
#include "core/files/sha256.h"

namespace stopwalk::documents {
namespace {

// The first error, as `line 3: what is wrong`, and how many more there are.
QString firstError(const std::vector<files::Diagnostic>& diagnostics) {
  const auto isError = [](const files::Diagnostic& d) { return d.severity == files::Severity::Error; };
  const auto first = std::find_if(diagnostics.begin(), diagnostics.end(), isError);
  if (first == diagnostics.end()) return {};
  const auto more = std::count_if(first + 1, diagnostics.end(), isError);
  QString text = Words::tr("line %1: %2").arg(first->line).arg(QString::fromStdString(first->text));
  if (more > 0) text += Words::tr("; and %1 more").arg(more);
  return text;
}

// What was found where a layout is to be written, and what stands in the way; no outcome: nothing.
struct Look {
  std::string sha256;  // empty: no file
  std::optional<SaveOutcome> outcome;
  Trouble trouble;
};

Look lookAt(const QString& target, const SaveRequest& request, const layout::DeviceKinds& kinds) {
  const FileBytes there = readBytes(target);
  if (there.presence == Presence::Missing) return {};
  if (there.presence == Presence::Unreadable)
    return {{},
            SaveOutcome::NotALayout,
            {target, Words::tr("Not saved: what is there cannot be read, and is left as it is"), there.why,
             Words::tr("Save under another name.")}};
  const std::string hash = files::sha256(there.bytes);
  const auto read = files::readLayout(there.bytes, target.toStdString(), kinds);
  if (!read.value)
    return {
        hash,
        SaveOutcome::NotALayout,
        {target, Words::tr("Not saved: what is there is not a layout, and is left as it is"),
         firstError(read.diagnostics), Words::tr("Save under another name, or move that file away first.")}};
  if (isWriteProtected(target))
    return {hash,
            SaveOutcome::WriteProtected,
            {target,
             Words::tr("Not saved: the file is write-protected, and is left as it is"),
             {},
             Words::tr("Save under another name, or take the protection off first.")}};
  if (request.overwrite || hash == request.base_sha256) return {hash, {}, {}};
  if (request.base_sha256.empty())
    return {hash,
            SaveOutcome::AlreadyThere,
            {target,
             Words::tr("Not saved: there is a layout of this name already"),
             {},
             Words::tr("Save under another name, or replace it.")}};
  return {hash,
          SaveOutcome::ChangedOnDisk,
          {target,
           Words::tr("Not saved: the file has changed on disk since it was opened"),
           {},
           Words::tr("Save under another name, or look at both and replace the one on disk.")}};
}

Trouble unwritable(const QString& target, const std::vector<files::Diagnostic>& diagnostics) {
  return {target, Words::tr("Not saved: the file would not open again"), firstError(diagnostics),
          Words::tr("Undo the last change and save again.")};
}

Trouble failedWrite(const QString& target, const WriteResult& result) {
  if (result.written == Written::Unsure)
    return {target, Words::tr("Saved, but it is not sure that the file would survive a power cut"),
            result.why, Words::tr("Save again, or save a copy on another disk.")};
  return {target, Words::tr("Not saved: the file could not be written; what was there is unchanged"),
          result.why,
          Words::tr("Make room, or mend the permissions, or save in another folder; then save again.")};
}

}  // namespace

OpenResult openLayout(const QString& path, const layout::DeviceKinds& kinds) {
  OpenResult result{path, {}, {}, {}};
  const FileBytes there = readBytes(path);
  if (there.presence != Presence::There) {
    result.trouble = {path, Words::tr("Not opened: the file cannot be read"), there.why,
                      Words::tr("Choose another file, or mend what is in the way.")};
    return result;
  }
  result.read = files::readLayout(there.bytes, path.toStdString(), kinds);
  if (result.read.value)
    result.sha256 = files::sha256(there.bytes);
  else
    result.trouble = {path, Words::tr("Not opened: this is not a layout that can be read"),
                      firstError(result.read.diagnostics),
                      Words::tr("The file is left as it is. Mend the lines named, or open another file.")};
  return result;
}

SaveResult saveLayout(const SaveRequest& request, const layout::DeviceKinds& kinds) {
  const QString target = targetOf(request.path);
  SaveResult result{request.path, SaveOutcome::Failed, {}, {}};
  const std::string text = files::writeLayout(request.layout);
  if (const auto again = files::readLayout(text, target.toStdString(), kinds); !again.value) {
    result.outcome = SaveOutcome::Unwritable;
    result.trouble = unwritable(target, again.diagnostics);
    return result;
  }
  Look look = lookAt(target, request, kinds);
  WriteResult write;
  if (!look.outcome) {
    // Writing and syncing take their time: what came meanwhile is looked at again just before the rename.
    write = writeWhole(target, text, [&] {
      if (sha256OnDisk(target) != look.sha256) look = lookAt(target, request, kinds);
      return !look.outcome;
    });
  }
  if (look.outcome) {
    result.outcome = *look.outcome;
    result.trouble = look.trouble;
    return result;
  }
  if (write.written != Written::No) result.sha256 = files::sha256(text);
  if (write.written != Written::Yes) result.trouble = failedWrite(target, write);
  result.outcome = write.written == Written::Yes      ? SaveOutcome::Saved
                   : write.written == Written::Unsure ? SaveOutcome::Unsure
                                                      : SaveOutcome::Failed;
  return result;
}

}  // namespace stopwalk::documents

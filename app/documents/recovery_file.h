#pragma once

#include <QDateTime>
#include <QString>
#include <optional>
#include <string>
#include <string_view>

namespace stopwalk::documents {

// One kept state of a document: a line with the SHA-256 of all below it, a line of JSON, the text of the
// layout.
struct RecoveryFile {
  QString layout_path;      // empty: the document was never saved
  std::string base_sha256;  // of the file the document was read from or last saved as; empty: none
  QDateTime stored;         // UTC
  std::string text;
};

std::string recoveryText(const RecoveryFile& file);
// Nothing, if a byte is missing, too many, or another.
std::optional<RecoveryFile> parseRecovery(std::string_view bytes);

}  // namespace stopwalk::documents

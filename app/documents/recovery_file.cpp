#include "app/documents/recovery_file.h"

#include <QJsonDocument>
#include <QJsonObject>

#include "core/files/sha256.h"

namespace stopwalk::documents {
namespace {

constexpr std::size_t kHashLength = 64;

}  // namespace

std::string recoveryText(const RecoveryFile& file) {
  const QJsonObject head{{"stopwalk_recovery", 1},
                         {"layout", file.layout_path},
                         {"base_sha256", QString::fromStdString(file.base_sha256)},
                         {"stored", file.stored.toUTC().toString(Qt::ISODateWithMs)}};
  const std::string body =
      QJsonDocument(head).toJson(QJsonDocument::Compact).toStdString() + "\n" + file.text;
  return files::sha256(body) + "\n" + body;
}

std::optional<RecoveryFile> parseRecovery(std::string_view bytes) {
  if (bytes.size() <= kHashLength || bytes[kHashLength] != '\n') return std::nullopt;
  const std::string_view body = bytes.substr(kHashLength + 1);
  if (files::sha256(body) != bytes.substr(0, kHashLength)) return std::nullopt;
  const std::size_t end = body.find('\n');
  if (end == std::string_view::npos) return std::nullopt;
  const QJsonObject head =
      QJsonDocument::fromJson(QByteArray(body.data(), static_cast<qsizetype>(end))).object();
  if (head["stopwalk_recovery"].toInt() != 1) return std::nullopt;
  return RecoveryFile{head["layout"].toString(), head["base_sha256"].toString().toStdString(),
                      QDateTime::fromString(head["stored"].toString(), Qt::ISODateWithMs),
                      std::string(body.substr(end + 1))};
}

}  // namespace stopwalk::documents

#include "app/rounds/drafts.h"

#include "core/files/sha256.h"

namespace stopwalk::rounds {
namespace {

// A name of its own for each card, whatever stands in paths and ids.
QString nameOf(const CardKey& key) {
  const std::string all = key.records_file + "\n" + std::to_string(key.round) + "\n" + key.begun + "\n" +
                          key.device + "\n" + std::to_string(key.corrects);
  return "inspect/drafts/" + QString::fromStdString(files::sha256(all)).left(32);
}

}  // namespace

std::optional<Entered> Drafts::read(const CardKey& key) const {
  const QByteArray text = settings_.value(nameOf(key)).toByteArray();
  if (text.isEmpty()) return std::nullopt;
  return enteredIn(text);
}

void Drafts::keep(const CardKey& key, const Entered& entered) {
  if (entered == Entered())
    settings_.remove(nameOf(key));
  else
    settings_.setValue(nameOf(key), asText(entered));
}

void Drafts::forget(const CardKey& key) {
  settings_.remove(nameOf(key));
}

}  // namespace stopwalk::rounds

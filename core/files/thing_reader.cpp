#include "core/files/thing_reader.h"

#include <chrono>

namespace stopwalk::files {
namespace {

// YYYY-MM-DD, a day that there is.
bool isDate(std::string_view text) {
  constexpr std::string_view kForm = "0000-00-00";
  if (text.size() != kForm.size()) return false;
  int part[3] = {0, 0, 0}, at = 0;
  for (std::size_t i = 0; i < kForm.size(); ++i) {
    if (kForm[i] == '-' ? text[i] != '-' : (text[i] < '0' || text[i] > '9')) return false;
    if (kForm[i] == '-')
      ++at;
    else
      part[at] = 10 * part[at] + (text[i] - '0');
  }
  using namespace std::chrono;
  return year_month_day(year(part[0]), month(static_cast<unsigned>(part[1])),
                        day(static_cast<unsigned>(part[2])))
      .ok();
}

}  // namespace

void ThingReader::date(std::string_view key, std::string& date) {
  const auto node = map_.optional(key);
  set(date, node, [&](Node n) { return readText(n, reading_.problems); });
  if (node && node->isScalar() && !isDate(date))
    reading_.problems.warn(node->begin(),
                           quoted(date) + " is no date; write year, month and day, such as 2026-03-02");
}

void ThingReader::joins(std::string_view key, std::string& first, std::string& second) {
  const auto node = map_.required(key);
  if (!node) return;
  if (!node->isList() || node->size() != 2) {
    reading_.problems.error(node->begin(),
                            "two rooms are expected here, or a room and outside: [room, outside]");
    return;
  }
  auto i = node->items().begin();
  const Node a = *i;
  ++i;
  const Node b = *i;
  set(first, a, [&](Node n) { return readId(n, reading_.problems); });
  set(second, b, [&](Node n) { return readId(n, reading_.problems); });
  if (first == layout::kOutside)
    reading_.problems.error(
        a.begin(), "the first room carries the door, so it cannot be outside; write [room, outside]");
  else if (!first.empty())
    reading_.references.mention(first, {Names::Room}, "room", a.begin());
  if (!second.empty() && second != layout::kOutside)
    reading_.references.mention(second, {Names::Room}, "room", b.begin());
}

void ThingReader::stops(std::string_view key, std::optional<layout::Stops>& stops) {
  const auto node = map_.optional(key);
  if (!node) return;
  if (node->isScalar() && node->text() == layout::kAll) {
    stops = layout::Stops{true, {}};
    return;
  }
  if (!node->isList()) {
    const std::string hint =
        node->isScalar() && isId(node->text()) ? "; write [" + std::string(node->text()) + "]" : "";
    reading_.problems.error(node->begin(), "all, or a list of machines and rooms, is expected here" + hint);
    return;
  }
  stops.emplace();
  for (const Node item : node->items()) {
    const auto id = readId(item, reading_.problems);
    if (!id) continue;
    if (*id == layout::kAll) {
      reading_.problems.error(item.begin(), "`all` stands alone, not in a list: stops: all");
      continue;
    }
    reading_.references.mention(*id, {Names::Machine, Names::Room}, "machine or room", item.begin());
    stops->ids.push_back(*id);
  }
}

void ThingReader::runDown(std::string_view key, std::optional<double>& all,
                          std::vector<std::pair<std::string, double>>& each) {
  const auto node = map_.optional(key);
  if (!node) return;
  if (!node->isMap()) {
    set(all, node, [&](Node n) { return reading_.values.seconds(n); });
    return;
  }
  const auto items = node->items();
  for (auto i = items.begin(); i != items.end(); ++i) {
    const Node id_node = *i;
    ++i;
    const auto id = readId(id_node, reading_.problems);
    const auto s = reading_.values.seconds(*i);
    if (id) reading_.references.mention(*id, {Names::Machine}, "machine", id_node.begin());
    if (id && s) each.emplace_back(*id, *s);
  }
}

void ThingReader::heldAt(std::string_view key, std::optional<std::vector<std::string>>& stations) {
  const auto node = map_.optional(key);
  if (!node) return;
  if (!onMachine()) {
    reading_.problems.error(node->begin(), "only a device on a machine is held at its stations");
    return;
  }
  if (!node->isList()) {
    reading_.problems.error(node->begin(), "a list of stations of this machine is expected here");
    return;
  }
  stations.emplace();
  for (const Node item : node->items()) {
    const auto id = readId(item, reading_.problems);
    if (!id) continue;
    reading_.references.mention(scope_ + *id, {Names::Station}, "station on this machine", item.begin(),
                                scope_.size());
    stations->push_back(*id);
  }
}

void ThingReader::place(std::string_view key, std::string& id) {
  const auto node = map_.required(key);
  if (!node) return;
  const auto text = readText(*node, reading_.problems);
  if (!text) return;
  id = *text;
  const std::size_t slash = text->find('/');
  const bool well_formed = slash == std::string::npos
                               ? isId(*text)
                               : isId(text->substr(0, slash)) && isId(text->substr(slash + 1));
  if (!well_formed)
    reading_.problems.error(
        node->begin(),
        "the id of a place is expected here, such as machine/station or phone, not " + quoted(*text));
  else
    reading_.references.mention(*text, {Names::Station, Names::Device, Names::Phone},
                                "station, device or phone", node->begin());
}

}  // namespace stopwalk::files

#include "core/files/inspection_record_json.h"

#include <nlohmann/json.hpp>

#include "core/files/failures_in_text.h"
#include "core/files/printable.h"
#include "core/files/rewritten.h"

namespace stopwalk::files {
namespace {

using inspection::Check;
using inspection::Round;
using Json = nlohmann::ordered_json;
using Parsed = nlohmann::json;

constexpr int kFormat = 1;
constexpr const char* kAfterHours = "after";

Json layoutJson(const inspection::LayoutThen& layout) {
  return {{"revision", layout.revision ? Json(*layout.revision) : Json(nullptr)}, {"sha256", layout.sha256}};
}

void addText(Json& json, const char* key, const std::string& text) {
  if (!text.empty()) json[key] = text;
}

void addEntered(Json& json, const std::optional<inspection::Moment>& entered) {
  if (entered) json["entered"] = momentText(*entered);
}

// Only what is not as usual.
Json walkJson(const inspection::RoundWalk& walk) {
  Json json = Json::object();
  if (walk.after_hours) json["hours"] = kAfterHours;
  addText(json, "start", walk.start);
  if (walk.closed) json["closed"] = true;
  return json;
}

void add(Json& json, const Round& r) {
  json["record"] = "round";
  json["at"] = momentText(r.at);
  addEntered(json, r.entered);
  json["by"] = r.by;
  json["of"] = r.of;
  json["devices"] = r.devices;
  if (r.walk != inspection::RoundWalk()) json["walk"] = walkJson(r.walk);
  json["layout"] = layoutJson(r.layout);
}

void add(Json& json, const Check& c) {
  json["record"] = "check";
  json["round"] = c.round;
  json["device"] = c.device;
  json["machines"] = c.machines;
  if (c.no_stop) json["no_stop"] = true;
  json["room"] = c.room;
  json["at"] = momentText(c.at);
  addEntered(json, c.entered);
  json["inspector"] = c.inspector;
  addText(json, "second", c.second);
  json["tested"] = Json::object();
  for (const auto& [test, yes] : c.tested) json["tested"][std::string(word(test))] = yes;
  json["result"] = word(c.result);
  if (c.removed) json["removed"] = true;
  if (const auto mean = inspection::meanOf(c.run_down_s)) {
    json["run_down_s"] = c.run_down_s;
    json["mean_run_down_s"] = *mean;
  }
  addText(json, "note", c.note);
  if (c.tagged_out) {
    Json& tag = json["tagged_out"] = {{"by", c.tagged_out->by}};
    if (c.tagged_out->until) tag["until"] = inspection::dateText(*c.tagged_out->until);
  }
  addText(json, "action", c.action);
  if (c.corrective) {
    Json& todo = json["corrective"] = {{"what", c.corrective->what}, {"owner", c.corrective->owner}};
    if (c.corrective->due) todo["due"] = inspection::dateText(*c.corrective->due);
  }
  if (c.corrects) json["corrects"] = *c.corrects;
  json["layout"] = layoutJson(c.layout);
}

// The library's exceptions are caught in readRecord; so is this one.
struct Unreadable {
  std::string why;
};

template <class T>
T must(std::optional<T> value, const char* key) {
  if (!value) throw Unreadable{"`" + std::string(key) + "` cannot be read"};
  return *std::move(value);
}

std::string textOr(const Parsed& json, const char* key) {
  const auto at = json.find(key);
  return at == json.end() ? std::string() : at->get<std::string>();
}

// What is only written where it is so.
bool yesOr(const Parsed& json, const char* key) {
  const auto at = json.find(key);
  return at != json.end() && at->get<bool>();
}

inspection::LayoutThen layoutOf(const Parsed& json) {
  const Parsed& revision = json.at("revision");
  return {revision.is_null() ? std::nullopt : std::optional(revision.get<int>()),
          json.at("sha256").get<std::string>()};
}

inspection::Moment momentOf(const Parsed& json, const char* key) {
  return must(inspection::parseMoment(json.at(key).get_ref<const std::string&>()), key);
}

std::optional<inspection::Moment> enteredOf(const Parsed& json) {
  return json.contains("entered") ? std::optional(momentOf(json, "entered")) : std::nullopt;
}

inspection::RoundWalk walkOf(const Parsed& json) {
  inspection::RoundWalk walk;
  if (const auto hours = json.find("hours"); hours != json.end())
    walk.after_hours = hours->get<std::string>() == kAfterHours;
  walk.start = textOr(json, "start");
  walk.closed = yesOr(json, "closed");
  return walk;
}

Round roundOf(const Parsed& json) {
  Round r;
  r.at = momentOf(json, "at");
  r.entered = enteredOf(json);
  r.by = json.at("by").get<std::string>();
  r.of = json.at("of").get<std::string>();
  r.devices = json.at("devices").get<std::vector<std::string>>();
  if (const auto walk = json.find("walk"); walk != json.end()) r.walk = walkOf(*walk);
  r.layout = layoutOf(json.at("layout"));
  return r;
}

std::optional<inspection::Date> dateOr(const Parsed& json, const char* key) {
  const auto at = json.find(key);
  if (at == json.end()) return std::nullopt;
  return must(inspection::parseDate(at->get_ref<const std::string&>()), key);
}

inspection::Corrective correctiveOf(const Parsed& json) {
  return {json.at("what").get<std::string>(), json.at("owner").get<std::string>(), dateOr(json, "due")};
}

inspection::TagOut tagOutOf(const Parsed& json) {
  return {json.at("by").get<std::string>(), dateOr(json, "until")};
}

Check checkOf(const Parsed& json) {
  Check c;
  c.round = json.at("round").get<std::size_t>();
  c.device = json.at("device").get<std::string>();
  c.machines = json.at("machines").get<std::vector<std::string>>();
  c.no_stop = yesOr(json, "no_stop");
  c.room = json.at("room").get<std::string>();
  c.at = momentOf(json, "at");
  c.entered = enteredOf(json);
  c.inspector = json.at("inspector").get<std::string>();
  c.second = textOr(json, "second");
  const Parsed& tested = json.at("tested");
  for (const inspection::Tried test : inspection::kTried)
    if (const auto at = tested.find(word(test)); at != tested.end())
      c.tested.emplace_back(test, at->get<bool>());
  c.result = must(inspection::resultOf(json.at("result").get_ref<const std::string&>()), "result");
  c.removed = yesOr(json, "removed");
  if (const auto runs = json.find("run_down_s"); runs != json.end())
    c.run_down_s = runs->get<std::vector<double>>();
  c.note = textOr(json, "note");
  if (const auto tag = json.find("tagged_out"); tag != json.end()) c.tagged_out = tagOutOf(*tag);
  c.action = textOr(json, "action");
  if (const auto todo = json.find("corrective"); todo != json.end()) c.corrective = correctiveOf(*todo);
  if (const auto old = json.find("corrects"); old != json.end()) c.corrects = old->get<std::size_t>();
  c.layout = layoutOf(json.at("layout"));
  return c;
}

inspection::Record recordOf(const Parsed& json) {
  const std::string& kind = json.at("record").get_ref<const std::string&>();
  if (kind == "round") return roundOf(json);
  if (kind == "check") return checkOf(json);
  throw Unreadable{"there is no record `" + kind + "`"};
}

// What `read` says; none: it cannot be read.
template <class Read>
auto readable(Read read) -> std::optional<decltype(read())> {
  try {
    return read();
  } catch (const Unreadable&) {
  } catch (const Parsed::exception&) {
  }
  return std::nullopt;
}

// Of what is no record which device failed, and what else can be read of it.
void readFailure(const Parsed& json, ReadRecord& read) {
  const auto device = readable([&] { return json.at("device").get<std::string>(); });
  const auto result = readable([&] { return json.at("result").get<std::string>(); });
  if (!device || result != word(inspection::Result::Fail)) return;
  Check c;
  c.device = *device;
  c.result = inspection::Result::Fail;
  const auto machines = readable([&] { return json.at("machines").get<std::vector<std::string>>(); });
  c.machines = machines.value_or(std::vector<std::string>());
  c.round = readable([&] { return json.at("round").get<std::size_t>(); }).value_or(0);
  c.inspector = readable([&] { return json.at("inspector").get<std::string>(); }).value_or("");
  const auto at = readable([&] { return momentOf(json, "at"); });
  const auto entered = readable([&] { return momentOf(json, "entered"); });
  read.has_no_time = !at && !entered;
  if (!read.has_no_time) c.at = at ? *at : *entered;
  c.is_undated = !at;
  c.entered = entered;
  read.record = c;
}

}  // namespace

std::string recordBody(const inspection::Record& record, std::size_t number, const std::string& before) {
  Json json = {{"stopwalk_inspections", kFormat}, {"n", number}, {"before", before}};
  std::visit([&](const auto& r) { add(json, r); }, record);
  std::string text = json.dump(-1, ' ', false, Json::error_handler_t::replace);
  text.pop_back();
  return text;
}

std::string recordObject(const inspection::Record& record) {
  Json json;
  std::visit([&](const auto& r) { json["n"] = r.number, add(json, r); }, record);
  if (const auto* check = std::get_if<Check>(&record); check && check->is_undated) json["at"] = nullptr;
  return printableJson(json.dump(-1, ' ', false, Json::error_handler_t::replace));
}

ReadRecord readRecord(std::string_view object) {
  ReadRecord read;
  Parsed json;
  try {
    json = Parsed::parse(object);
    if (json.at("stopwalk_inspections").get<int>() != kFormat) throw Unreadable{"it is of a newer version"};
    read.number = json.at("n").get<std::size_t>();
    read.before = json.at("before").get<std::string>();
    read.record = recordOf(json);
  } catch (const Unreadable& e) {
    read.why = e.why;
  } catch (const std::exception&) {
    read.why = "it is not a record of this format";
  }
  if (!read.record) readFailure(json, read);
  return read;
}

bool isTorn(std::string_view text) {
  if (saysFail(text)) return false;  // it would be told no longer once it is put aside
  if (isUtf16(text)) return false;   // no crash leaves that
  if (text.starts_with(kRecordBegins) && Parsed::accept(text.substr(0, text.rfind('}') + 1)))
    return false;  // it is whole, whatever is behind it
  if (text.find('\0') != std::string_view::npos) return true;
  if (!text.starts_with(kRecordBegins.substr(0, text.size()))) return false;
  try {
    return Parsed::parse(text).is_discarded();  // which does not come to this
  } catch (const Parsed::parse_error& e) {
    return e.byte > text.size();  // nothing is wrong but that it ends
  } catch (const Parsed::exception&) {
    return false;  // such as a number beyond all
  }
}

}  // namespace stopwalk::files

#include "core/files/layout_writer.h"

#include <algorithm>
#include <functional>

#include "core/files/field_texts.h"
#include "core/files/scalar_text.h"

namespace stopwalk::files {
namespace {

using layout::KeptEntry;
using layout::KeptText;
using layout::LengthUnit;

struct Output {
  std::string& text;
  LengthUnit unit;
};

void indent(Output& out, std::size_t columns) {
  out.text.append(columns, ' ');
}

void commentLines(Output& out, std::string_view lines, std::size_t columns) {
  for (std::size_t from = 0; from < lines.size();) {
    const std::size_t end = lines.find('\n', from);
    if (end > from) indent(out, columns);
    out.text += lines.substr(from, end - from);
    out.text += '\n';
    from = end + 1;
  }
}

void indented(Output& out, std::string_view source, std::size_t columns) {
  for (std::size_t i = 0; i < source.size(); ++i) {
    out.text += source[i];
    if (source[i] == '\n' && i + 1 < source.size() && source[i + 1] != '\n') indent(out, columns);
  }
}

// A key to be written, with what the program or the file says of it.
struct Slot {
  const Field* field;      // null: unknown
  const KeptEntry* entry;  // null: not in the file
};

// The file's order; what it did not have stands where the program would put it.
std::vector<Slot> ordered(const std::vector<Field>& fields, const KeptText* kept) {
  std::vector<Slot> slots;
  std::vector<bool> taken(fields.size());
  if (kept != nullptr) {
    for (const KeptEntry& entry : kept->entries) {
      const auto found = std::find_if(fields.begin(), fields.end(),
                                      [&](const Field& f) { return entry.known && f.key == entry.key; });
      if (!entry.known) slots.push_back({nullptr, &entry});
      if (found == fields.end() || (found->text.empty() && !found->nested)) continue;
      taken[static_cast<std::size_t>(found - fields.begin())] = true;
      slots.push_back({&*found, &entry});
    }
  }
  std::size_t place = 0;
  for (std::size_t i = 0; i < fields.size(); ++i) {
    const Field& field = fields[i];
    const bool wanted = !field.implied && (!field.text.empty() || field.nested);
    if (taken[i])
      place = static_cast<std::size_t>(
                  std::find_if(slots.begin(), slots.end(), [&](const Slot& s) { return s.field == &field; }) -
                  slots.begin()) +
              1;
    else if (wanted)
      slots.insert(slots.begin() + static_cast<std::ptrdiff_t>(place++), {&field, nullptr});
  }
  return slots;
}

// What stands after the colon of a value on one line, or on several as the file had it.
std::string valueText(const Slot& slot, const KeptText* kept, LengthUnit unit) {
  const KeptEntry* entry = slot.entry;
  if (slot.field == nullptr) return entry->source;
  if (entry == nullptr) return " " + slot.field->text;
  const bool holds = entry->canonical == slot.field->text && kept->unit == static_cast<int>(unit);
  if (holds && !entry->source.empty()) return entry->source;
  std::string text = " " + slot.field->text;
  if (!entry->extra.empty() && text.back() == '}') text.insert(text.size() - 1, entry->extra);
  return text;
}

// Writes the things within a thing.
class ThingWriter : public FieldTexts {
 public:
  using Write = std::function<void(Output&, std::size_t columns, bool flow, const KeptEntry*)>;
  ThingWriter(LengthUnit unit, bool on_machine, bool is_machine)
      : FieldTexts(unit, on_machine), is_machine_(is_machine) {}

  template <class Thing>
  void thing(std::string_view key, const Thing& thing);
  template <class Thing>
  void thing(std::string_view key, const std::optional<Thing>& thing);
  template <class Thing>
  void list(std::string_view key, const std::vector<Thing>& things);

  void write(Output& out, std::string_view key, std::size_t columns, bool flow,
             const KeptEntry* entry) const {
    for (const auto& [known, write] : nested_)
      if (known == key) write(out, columns, flow, entry);
  }

 private:
  bool is_machine_;
  std::vector<std::pair<std::string_view, Write>> nested_;
};

template <class Thing>
bool isFlow(const Thing& thing) {
  return thing.kept.text ? thing.kept.text->flow : !Manner<Thing>::kBlock;
}

template <class Thing>
void writeFlow(Output& out, const Thing& thing, std::size_t columns, bool on_machine) {
  ThingWriter writer(out.unit, on_machine, std::is_same_v<Thing, layout::Machine>);
  describe(writer, thing);
  const KeptText* kept = thing.kept.text.get();
  out.text += '{';
  bool first = true;
  for (const Slot& slot : ordered(writer.fields(), kept)) {
    if (!first) out.text += ", ";
    first = false;
    const std::string_view key = slot.field != nullptr ? slot.field->key : slot.entry->key;
    out.text += scalarText(key) + ":";
    if (slot.field != nullptr && slot.field->nested)
      writer.write(out, key, columns, true, slot.entry);
    else
      indented(out, valueText(slot, kept, out.unit), columns);
  }
  out.text += '}';
}

// `first_columns`: where the first key stands, so that it may follow the dash of a list.
template <class Thing>
void writeBlock(Output& out, const Thing& thing, std::size_t columns, bool is_item, bool on_machine) {
  ThingWriter writer(out.unit, on_machine, std::is_same_v<Thing, layout::Machine>);
  describe(writer, thing);
  const KeptText* kept = thing.kept.text.get();
  bool first = is_item;
  for (const Slot& slot : ordered(writer.fields(), kept)) {
    if (slot.entry != nullptr) commentLines(out, slot.entry->before, columns);
    indent(out, first ? columns - 2 : columns);
    if (first) out.text += "- ";
    first = false;
    const std::string_view key = slot.field != nullptr ? slot.field->key : slot.entry->key;
    out.text += scalarText(key) + ":";
    if (slot.field != nullptr && slot.field->nested) {
      writer.write(out, key, columns, false, slot.entry);
      continue;
    }
    indented(out, valueText(slot, kept, out.unit), columns);
    if (slot.entry != nullptr) out.text += slot.entry->after;
    out.text += '\n';
  }
}

template <class Thing>
void ThingWriter::thing(std::string_view key, const Thing& thing) {
  FieldTexts::thing(key, thing);
  nested_.emplace_back(key, [&thing](Output& out, std::size_t columns, bool flow, const KeptEntry* entry) {
    if (flow || isFlow(thing)) {
      out.text += ' ';
      writeFlow(out, thing, columns, false);
      if (!flow) (out.text += entry != nullptr ? entry->after : "") += '\n';
    } else {
      (out.text += entry != nullptr ? entry->header : "") += '\n';
      writeBlock(out, thing, columns + 2, false, false);
    }
  });
}

template <class Thing>
void ThingWriter::thing(std::string_view key, const std::optional<Thing>& thing) {
  if (thing)
    this->thing(key, *thing);
  else
    FieldTexts::thing(key, thing);
}

template <class Thing>
void ThingWriter::list(std::string_view key, const std::vector<Thing>& things) {
  FieldTexts::list(key, things);
  nested_.emplace_back(key, [&things, on_machine = is_machine_](Output& out, std::size_t columns, bool flow,
                                                                const KeptEntry* entry) {
    if (flow) {
      out.text += " [";
      for (const Thing& thing : things) {
        if (&thing != &things.front()) out.text += ", ";
        writeFlow(out, thing, columns, on_machine);
      }
      out.text += ']';
      return;
    }
    (out.text += entry != nullptr ? entry->header : "") += '\n';
    for (const Thing& thing : things) {
      const KeptText* kept = thing.kept.text.get();
      if (kept != nullptr) commentLines(out, kept->before, columns + 2);
      if (isFlow(thing)) {
        indent(out, columns + 2);
        out.text += "- ";
        writeFlow(out, thing, columns + 4, on_machine);
        (out.text += kept != nullptr ? kept->after : "") += '\n';
      } else {
        writeBlock(out, thing, columns + 4, true, on_machine);
      }
    }
  });
}

}  // namespace

std::string writeLayout(const layout::Layout& layout) {
  std::string text;
  Output out{text, layout.unit};
  // A file in braces becomes one of lines; the things within stay as they were.
  writeBlock(out, layout, 0, false, false);
  if (layout.kept.text) commentLines(out, layout.kept.text->tail, 0);
  return text + "...\n";
}

}  // namespace stopwalk::files

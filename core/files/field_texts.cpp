#include "core/files/field_texts.h"

namespace stopwalk::files {

void FieldTexts::text(std::string_view key, const std::string& text, Need need) {
  add(key, scalarText(text), need == Need::Optional && text.empty());
}

std::string FieldTexts::outlineText(const geometry::Polygon& outline) const {
  std::string text = "[";
  for (const Point& corner : outline) text += (text.size() > 1 ? ", " : "") + pointText(corner);
  return text + "]";
}

std::string FieldTexts::listText(const std::vector<std::string>& ids) {
  std::string text = "[";
  for (const std::string& id : ids) text += (text.size() > 1 ? ", " : "") + scalarText(id);
  return text + "]";
}

void FieldTexts::footprint(std::string_view key, const layout::Footprint& shape) {
  if (const auto* r = std::get_if<layout::Rectangle>(&shape))
    add(key, "{width: " + length(r->width) + ", depth: " + length(r->depth) + "}");
  else
    add(key, "{outline: " + outlineText(std::get<geometry::Polygon>(shape)) + "}");
}

void FieldTexts::stops(std::string_view key, const std::optional<layout::Stops>& stops) {
  if (!stops)
    add(key, "");
  else
    add(key, stops->all ? layout::kAll : listText(stops->ids));
}

void FieldTexts::runDown(std::string_view key, std::optional<double> all,
                         const std::vector<std::pair<std::string, double>>& each) {
  if (each.empty()) return add(key, all ? layout::numberText(*all) : "");
  std::string text = "{";
  for (const auto& [id, s] : each)
    text += (text.size() > 1 ? ", " : "") + scalarText(id) + ": " + layout::numberText(s);
  add(key, text + "}");
}

}  // namespace stopwalk::files

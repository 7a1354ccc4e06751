#pragma once

#include "app/plan/items/symbol_item.h"

namespace stopwalk::plan {

// The emergency phone.
class PhoneItem : public SymbolItem {
 public:
  PhoneItem(const layout::Layout& layout, std::size_t phone);
  std::optional<Label> label(const PaintContext& context) const override;

 private:
  QString name_;
};

}  // namespace stopwalk::plan

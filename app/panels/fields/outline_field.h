#pragma once

#include <QPushButton>
#include <QTableWidget>
#include <functional>

#include "app/panels/fields/length_field.h"

namespace stopwalk::panels {

// The corners of an outline as a small table. One that is optional has no corners until it is added.
class OutlineField : public Field {
  Q_OBJECT

 public:
  using Value = geometry::Polygon;

  OutlineField(FieldText text, Known known, QWidget* parent = nullptr);

  ~OutlineField() override { table_->disconnect(this); }

  std::function<void(const Value&)> entered;

  QTableWidget* table() const { return table_; }
  QPushButton* addButton() const { return add_; }
  QPushButton* removeButton() const { return remove_; }
  // What is added to one without corners.
  void setUsual(Value usual) { usual_ = std::move(usual); }
  void setUnit(layout::LengthUnit unit) override;
  void applyPending() override { closeEditor(*table_); }
  void show(const Value& corners);
  void showDiffering();

 private:
  void fill();
  void enterCell(int row, int column);
  void addCorner();
  void removeCorner();
  void take(Value corners, int row);

  QTableWidget* table_;
  QPushButton* add_;
  QPushButton* remove_;
  layout::LengthUnit unit_ = layout::LengthUnit::Millimetre;
  Known known_;
  Value corners_;
  Value usual_;
  bool differ_ = false;
};

// The same footprint as a rectangle (round its corners), or by corners.
layout::Footprint inShape(const layout::Footprint& footprint, bool rectangle);

}  // namespace stopwalk::panels

#pragma once

#include <QWidget>

#include "app/plan/picture.h"

namespace stopwalk::plan {

// A layout in small, to be told from another.
class PicturePreview : public QWidget {
  Q_OBJECT

 public:
  PicturePreview(const layout::Layout& layout, const layout::DeviceKinds& kinds, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {360, 260}; }

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  const Picture picture_;
};

}  // namespace stopwalk::plan

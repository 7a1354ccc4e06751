#pragma once

#include <array>
#include <map>

#include "app/poster/arrangement.h"
#include "app/poster/block.h"
#include "app/poster/poster.h"

namespace stopwalk::poster {

// What the pages of one poster are put together from; each piece is made once for its width and sizes.
// Keeps references to all that it is given.
class PosterParts {
 public:
  PosterParts(const Content& content, const About& about, const Wish& wish)
      : content_(content), about_(about), wish_(wish), letters_(wish.family) {}

  const Lettering& letters() const { return letters_; }
  Block header(QSizeF page) const { return headerOf(content_, wish_.languages, letters_, page); }
  Block headerAgain(QSizeF page, std::size_t number, std::size_t pages) const;
  const Block& foot(QSizeF page, const Sizes& sizes);
  const std::vector<Block>& table(const Arrangement& a);
  Block box(const Arrangement& a) const;
  // Said below a table that is not at its end: on which page it goes on.
  Block goesOn(const Arrangement& a, std::size_t number, std::size_t pages) const;

  // Of the first page, between header and foot.
  QRectF body(QSizeF page);
  // Of a page after the first.
  std::vector<QRectF> furtherColumns(const Arrangement& a);

 private:
  Block footNew(QSizeF page, const Sizes& sizes) const;

  const Content& content_;
  const About& about_;
  const Wish& wish_;
  Lettering letters_;
  std::map<std::pair<long, long>, std::vector<Block>> tables_;
  std::map<std::array<double, 3>, Block> feet_;
};

}  // namespace stopwalk::poster

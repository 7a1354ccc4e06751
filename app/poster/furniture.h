#pragma once

#include <string>

#include "app/poster/block.h"
#include "app/poster/content.h"
#include "app/poster/sizes.h"
#include "app/poster/words.h"
#include "core/layout/layout.h"

// What stands round the plan and the table on every poster.
namespace stopwalk::poster {

struct About {
  const layout::Layout& layout;
  std::string sha256;                          // of the file; empty: no file holds this very layout
  std::size_t faults = 0;                      // of the drawing: what is faulty may be missing
  std::vector<std::string> out_of_order = {};  // ids of stops that failed and have not passed since
};

// What a poster is held against: the file, and what of it was out of order. Where nothing was, the hash of
// the file alone. Empty: there is no file.
std::string posterHash(const About& about);
// The first digits of it, as printed and as asked for by `check --poster`.
inline constexpr std::size_t kShortHash = 12;

// Band across the page with the stop sign, the words and the room: for each language one band.
Block headerOf(const Content& content, const Languages& languages, const Lettering& letters, QSizeF page);
// The letters of the title, mm.
double titleCap(QSizeF page);
// Those of the room's name, which may be long.
double roomCap(const Content& content, const Languages& languages, const Lettering& letters, QSizeF page);
// On the pages after the first: one small line.
Block goesOnHeader(const Content& content, const Languages& languages, const Lettering& letters, double width,
                   std::size_t page, std::size_t pages);

// What to dial, what to say, where to meet, how far the phone is.
Block emergencyBox(const Content& content, const About& about, const Languages& languages,
                   const Lettering& letters, double width, double cap);

// How far letters and signs of these heights are read, in the words of a text with four places: the larger
// letters and the others. Signs of 0 mm: there are none.
QString sizesText(const char* letters, double large_mm, double others_mm, double signs_mm,
                  const Language& language);

// Who drew it and when, the hash, the check bar, sizes and caution, and room for the code at its right end.
Block footOf(const Content& content, const About& about, const Languages& languages, const Lettering& letters,
             double width, const QString& sizes);
// The code that goes into a foot of this width.
Mark footCode(const Content& content, const About& about, double width);

// What the code on the poster holds.
QString codeText(const Content& content, const About& about);

// "12.3 m (40 ft)", rounded up: never nearer than it is. The decimal mark is the language's.
QString walkText(double length_mm, const Language& language);

}  // namespace stopwalk::poster

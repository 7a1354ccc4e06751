#pragma once

#include <string>
#include <string_view>

namespace stopwalk::layout {

// A decimal number of any number of digits: `digits` * 10^exponent. Lets a length be changed from one unit to
// another with a single rounding, so that what is written is what is read again.
class Decimal {
 public:
  // `text` must be one that `parseNumber` accepts.
  static Decimal of(std::string_view text);

  void multiply(int times);
  // The quotient to so many significant digits, rounded half up.
  void divide(int by, int significant);
  void shift(int powers_of_ten) { exponent_ += powers_of_ten; }

  std::string text() const;       // with an exponent
  std::string plainText() const;  // without one, as a person writes it, unless very large or small

 private:
  void dropZeros();

  bool negative_ = false;
  std::string digits_;  // no leading zeros; empty is zero
  int exponent_ = 0;
};

}  // namespace stopwalk::layout

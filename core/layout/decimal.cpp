#include "core/layout/decimal.h"

#include <algorithm>
#include <charconv>
#include <cstdlib>

namespace stopwalk::layout {

Decimal Decimal::of(std::string_view text) {
  Decimal d;
  bool after_point = false;
  std::size_t i = 0;
  for (; i < text.size() && text[i] != 'e' && text[i] != 'E'; ++i) {
    if (text[i] == '-') {
      d.negative_ = true;
    } else if (text[i] == '.') {
      after_point = true;
    } else {
      if (!d.digits_.empty() || text[i] != '0') d.digits_ += text[i];
      if (after_point) --d.exponent_;
    }
  }
  if (i < text.size()) {
    ++i;
    if (i < text.size() && text[i] == '+') ++i;
    int e = 0;
    std::from_chars(text.data() + i, text.data() + text.size(), e);
    d.exponent_ += std::clamp(e, -100000, 100000);
  }
  d.dropZeros();
  return d;
}

void Decimal::dropZeros() {
  const std::size_t leading = std::min(digits_.find_first_not_of('0'), digits_.size());
  digits_.erase(0, leading);
  while (!digits_.empty() && digits_.back() == '0') {
    digits_.pop_back();
    ++exponent_;
  }
}

void Decimal::multiply(int times) {
  int carry = 0;
  for (std::size_t i = digits_.size(); i-- > 0;) {
    carry += (digits_[i] - '0') * times;
    digits_[i] = static_cast<char>('0' + carry % 10);
    carry /= 10;
  }
  if (carry != 0) digits_.insert(0, std::to_string(carry));
  dropZeros();
}

void Decimal::divide(int by, int significant) {
  std::string quotient;
  int rest = 0;
  std::size_t i = 0;
  // One digit more than asked for, to round by.
  while (static_cast<int>(quotient.size()) <= significant && (i < digits_.size() || rest != 0)) {
    rest = rest * 10 + (i < digits_.size() ? digits_[i] - '0' : 0);
    const int digit = rest / by;
    rest %= by;
    if (!quotient.empty() || digit != 0) quotient += static_cast<char>('0' + digit);
    ++i;
  }
  exponent_ += static_cast<int>(digits_.size()) - static_cast<int>(i);
  digits_ = std::move(quotient);
  if (static_cast<int>(digits_.size()) > significant) {
    const bool up = digits_.back() >= '5';
    digits_.pop_back();
    ++exponent_;
    std::size_t k = digits_.size();
    while (up && k > 0 && digits_[k - 1] == '9') digits_[--k] = '0';
    if (up && k > 0) ++digits_[k - 1];
    if (up && k == 0) digits_.insert(0, "1");
  }
  dropZeros();
}

std::string Decimal::text() const {
  if (digits_.empty()) return "0";
  return (negative_ ? "-" : "") + digits_ + "e" + std::to_string(exponent_);
}

std::string Decimal::plainText() const {
  if (digits_.empty()) return "0";
  const int size = static_cast<int>(digits_.size());
  const int before_point = size + exponent_;
  if (before_point < -20 || before_point > 40) return text();
  std::string out = digits_;
  if (exponent_ >= 0)
    out.append(static_cast<std::size_t>(exponent_), '0');
  else if (before_point > 0)
    out.insert(static_cast<std::size_t>(before_point), ".");
  else
    out = "0." + std::string(static_cast<std::size_t>(-before_point), '0') + digits_;
  return (negative_ ? "-" : "") + out;
}

}  // namespace stopwalk::layout

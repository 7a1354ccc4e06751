#pragma once

namespace stopwalk::poster {

// Least sizes on paper, mm. ISO 23601:2020 cl. 6 as reproduced: letters 2; header 7 % of the smallest
// dimension, its letters 60 % of it; safety signs 7; structural walls 1.6, partitions 0.6.
inline constexpr double kLeastLetter_mm = 2;
inline constexpr double kHeaderPart = 0.07;
inline constexpr double kHeaderLetterPart = 0.6;
inline constexpr double kLeastSign_mm = 7;
inline constexpr double kStructuralWall_mm = 1.6;
inline constexpr double kPartition_mm = 0.6;
// ISO 23601 as summarised: not smaller than 1:250.
inline constexpr int kSmallestScale = 250;
// House rules: what is in the table is read from a step away, and the cut-off is found first.
inline constexpr double kLeastTableLetter_mm = 4;
inline constexpr double kCutOffOver = 1.4;   // of the other signs
inline constexpr double kNumberPart = 0.85;  // the number beside a sign, by the sign's width
// Printers leave some 5 mm white (from memory).
inline constexpr double kMargin_mm = 8;

// What one attempt at a page is made with.
struct Sizes {
  double table_cap = 4;
  double sign = 9;
  double name_cap = 2.5;  // of machines and doors on the plan
  double cutOff() const { return sign * kCutOffOver; }
};

// How far letters of a height are read, ASR A1.3 Table 3 (reproduced in DGUV Information 211-041); 0: nearer
// than half a metre.
double readTo_m(double letter_mm);
// How far a sign is recognised: 60 times its height, unlit (ISO 3864-1:2011, as quoted).
inline double recognisedTo_m(double sign_mm) {
  return 60 * sign_mm / 1000;
}

}  // namespace stopwalk::poster

#include "app/rounds/round_under_way.h"

#include <algorithm>

#include "core/inspection/round_progress.h"

namespace stopwalk::rounds {
const std::vector<std::string>& RoundUnderWay::order() const {
  static const std::vector<std::string> none;
  return round_ ? round_->devices : none;
}

std::size_t RoundUnderWay::place() const {
  return static_cast<std::size_t>(std::ranges::find(order(), device_) - order().begin());
}

void RoundUnderWay::fill() {
  const auto checks = inspection::checksIn(*records_, round_->number);
  checks_.clear();
  for (const std::string& device : order()) {
    const auto check = checks.find(device);
    checks_.push_back(check == checks.end() ? nullptr : check->second);
  }
}

void RoundUnderWay::setRecords(std::shared_ptr<const inspection::Records> records) {
  records_ = std::move(records);
  if (!round_) return;
  const inspection::Round* still = records_->findRound(round_->number);
  if (!still || *still != *round_) return leave();
  fill();
  emit changed();
}

void RoundUnderWay::walk(std::size_t round) {
  const inspection::Round* found = records_->findRound(round);
  if (!found || found->devices.empty()) return;
  round_ = *found;
  fill();
  const auto first = std::ranges::find(checks_, nullptr);
  device_ = order()[first == checks_.end() ? 0 : static_cast<std::size_t>(first - checks_.begin())];
  emit changed();
}

void RoundUnderWay::leave() {
  if (!round_) return;
  round_.reset();
  checks_.clear();
  device_.clear();
  emit changed();
}

const inspection::Check* RoundUnderWay::checkOf(const std::string& device) const {
  const auto at = std::ranges::find(order(), device);
  return at == order().end() ? nullptr : checks_[static_cast<std::size_t>(at - order().begin())];
}

std::optional<inspection::Result> RoundUnderWay::resultOf(const std::string& device) const {
  const inspection::Check* check = checkOf(device);
  return check ? std::optional(check->result) : std::nullopt;
}

std::size_t RoundUnderWay::checked() const {
  return checks_.size() - static_cast<std::size_t>(std::ranges::count(checks_, nullptr));
}

void RoundUnderWay::goTo(const std::string& device) {
  if (device == device_ || std::ranges::find(order(), device) == order().end()) return;
  device_ = device;
  emit changed();
}

void RoundUnderWay::goBy(int steps) {
  if (order().empty()) return;
  const int last = static_cast<int>(order().size()) - 1;
  goTo(order()[static_cast<std::size_t>(std::clamp(static_cast<int>(place()) + steps, 0, last))]);
}

void RoundUnderWay::goOn() {
  for (std::size_t step = 1; step <= order().size(); ++step) {
    const std::size_t at = (place() + step) % order().size();
    if (!checks_[at]) return goTo(order()[at]);
  }
}

}  // namespace stopwalk::rounds

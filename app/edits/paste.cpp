#include <QCoreApplication>
#include <unordered_map>

#include "app/edits/copy_things.h"
#include "app/edits/move_things.h"
#include "app/edits/new_ids.h"
#include "app/edits/only_things.h"
#include "app/edits/references.h"
#include "app/edits/step_names.h"
#include "app/edits/visit_thing.h"

namespace stopwalk::edits {
namespace {

using layout::Layout;

// Whether `id` names in both what people take for the same.
bool isSame(const Layout& a, const Layout& b, const std::string& id) {
  const auto in_a = findThing(a, id), in_b = findThing(b, id);
  if (!in_a || !in_b || in_a->kind != in_b->kind) return false;
  if (isOnMachine(*in_a)) return a.machines[in_a->index].name == b.machines[in_b->index].name;
  return nameOf(a, *in_a) == nameOf(b, *in_b);
}

// Makes of what was copied what is put into one layout.
class Pasting {
 public:
  Pasting(const Layout& into, const Clip& clip)
      : into_(into), clip_(clip), copied_(clip.ids.begin(), clip.ids.end()), taken_(takenIds(into)) {
    fresh_ = onlyThings(clip.things, copied_);
    // What is on a machine that is not there has nowhere to go.
    std::erase_if(fresh_.machines, [&](const layout::Machine& m) {
      return !copied_.contains(m.id) && !isSame(clip_.things, into_, m.id);
    });
  }

  Pasted pasted(geometry::Point by, const QString& name) {
    eachList([&](auto& list, auto&) {
      for (auto& thing : list) chooseId(thing);
    });
    followIds(fresh_, [&](const std::string& id) { return newId(id); });
    Layout after = into_;
    std::vector<std::string> ids;
    eachList([&](auto& list, auto member) {
      for (auto& thing : list) put(after, thing, after.*member, ids);
    });
    const auto things = knownThings(after, ids);
    if (things.empty()) return {noStep(into_), {}};
    for (const Thing& thing : things) moveThing(after, thing, by);
    const QString step_name = name.arg(called(after, things));
    Edit edit = step(into_, step_name, std::move(after));
    if (edit.name.isEmpty()) ids.clear();
    return {std::move(edit), std::move(ids)};
  }

 private:
  // Calls `f` with each list of what is new, and where such things are in a layout.
  template <class F>
  void eachList(F f) {
    const auto call = [&](auto member) { f(fresh_.*member, member); };
    call(&Layout::rooms), call(&Layout::doors), call(&Layout::fixtures), call(&Layout::machines);
    call(&Layout::devices), call(&Layout::phones), call(&Layout::notes), call(&Layout::tape_checks);
  }

  template <class T>
  void chooseId(const T& thing) {
    if constexpr (std::is_same_v<T, layout::Machine>)
      if (!copied_.contains(thing.id)) return chooseIdsOn(thing);
    new_ids_[thing.id] = freshId(taken_, thing.id);
  }

  void chooseIdsOn(const layout::Machine& some) {
    Ids taken = takenIds(into_.machines[findThing(into_, some.id)->index]);
    const auto choose = [&](const std::string& id) {
      new_ids_[some.id + "/" + id] = some.id + "/" + freshId(taken, id);
    };
    for (const auto& station : some.stations) choose(station.id);
    for (const auto& device : some.devices) choose(device.id);
  }

  std::optional<std::string> newId(const std::string& id) const {
    if (const auto own = new_ids_.find(id); own != new_ids_.end()) return own->second;
    if (const auto slash = id.find('/'); slash != std::string::npos)
      if (const auto machine = new_ids_.find(id.substr(0, slash)); machine != new_ids_.end())
        return machine->second + id.substr(slash);
    return isSame(clip_.things, into_, id) ? std::optional(id) : std::nullopt;
  }

  template <class T>
  void put(Layout& after, T& thing, std::vector<T>& list, std::vector<std::string>& ids) {
    if constexpr (std::is_same_v<T, layout::Machine>)
      if (!copied_.contains(thing.id))
        return putOn(after.machines[findThing(after, thing.id)->index], thing, ids);
    thing.id = new_ids_.at(thing.id);
    constexpr bool named = std::is_same_v<T, layout::Machine> || std::is_same_v<T, layout::Room> ||
                           std::is_same_v<T, layout::Phone>;
    if constexpr (named) {
      Ids names;
      for (const T& other : list) names.insert(other.name);
      thing.name = freshName(names, thing.name);
    }
    ids.push_back(thing.id);
    list.push_back(std::move(thing));
  }

  void putOn(layout::Machine& machine, layout::Machine& some, std::vector<std::string>& ids) {
    const auto put_all = [&](auto& from, auto& to) {
      for (auto& part : from) {
        ids.push_back(new_ids_.at(machine.id + "/" + part.id));
        part.id = ids.back().substr(machine.id.size() + 1);
        to.push_back(std::move(part));
      }
    };
    put_all(some.stations, machine.stations);
    put_all(some.devices, machine.devices);
  }

  const Layout& into_;
  const Clip& clip_;
  Ids copied_;
  Ids taken_;
  Layout fresh_;
  std::unordered_map<std::string, std::string> new_ids_;
};

}  // namespace

Pasted paste(const Layout& layout, const Clip& clip, geometry::Point by) {
  return Pasting(layout, clip).pasted(by, QCoreApplication::translate("edits", "Paste %1"));
}

Pasted duplicateThings(const Layout& layout, const std::vector<std::string>& ids, geometry::Point by) {
  const Clip clip = copyThings(layout, ids);
  return Pasting(layout, clip).pasted(by, QCoreApplication::translate("edits", "Duplicate %1"));
}

}  // namespace stopwalk::edits

#include "core/job/works_text.hpp"

#include <algorithm>

namespace sparewright::job {

using base::Code;
using text::TableReader;

namespace {

std::vector<shop::Tool> read_tools(const TableReader& in, const TableReader& table, const shop::Shop& shop) {
  std::vector<shop::Tool> tools;
  const auto with = table.node().find("with");  // named, so that it outlives the loop's head
  for (const text::Node& node : *with) {
    const shop::Tool* tool = shop::find_tool(shop, node.typed());
    const bool again = std::any_of(tools.begin(), tools.end(),
                                   [&](const shop::Tool& other) { return other.name == node.typed(); });
    if (again) {
      refuse_twice(in, node, "tool", "each tool once for a feature");
    } else if (tool != nullptr) {
      tools.push_back(*tool);
    } else {
      refuse(in, node, Code::kNotInTheShop, "tool", names_of(shop.tools));
    }
  }
  return tools;
}

void read_work(const TableReader& in, const TableReader& table, const char* key, const shop::Shop& shop,
               const Names& names, route::Setup& setup) {
  const auto found = table.number("found", quantity::Kind::kDiameter);
  const std::vector<shop::Tool> tools =
      table.node().find("with") ? read_tools(in, table, shop) : std::vector<shop::Tool>{};
  for (const std::string& feature : features_made(table.text(key).value_or(""), names)) {
    if (std::find(names.features.begin(), names.features.end(), feature) == names.features.end())
      refuse(in, *table.node().find(key), Code::kNotInTheJob, "feature", names.features);
    const bool joins = std::string_view(key) == "join";
    const bool joined =
        joins && std::any_of(setup.works.begin(), setup.works.end(),
                             [&](const route::Work& work) { return work.joins && work.feature == feature; });
    if (joined) refuse_twice(in, *table.node().find(key), "joint", "each joint once, in one setup");
    if (!joins && makes(setup, feature))
      refuse_twice(in, *table.node().find(key), "feature made", "each feature once, in one setup");
    setup.works.push_back({feature, tools, found, joins});
  }
}

bool takes_burrs_off(shop::ToolKind kind) {
  return kind == shop::ToolKind::kFile || kind == shop::ToolKind::kDeburringTool ||
         kind == shop::ToolKind::kCountersink;
}

// The features whose burrs come off; none for all edges.
std::vector<std::string> read_burrs(const TableReader& in, const text::Node& node, const Names& names) {
  constexpr std::string_view kAll = "all edges";
  std::vector<std::string> features;
  const auto add = [&](const text::Node& one) {
    for (const std::string& feature : features_made(std::string(one.typed()), names)) {
      if (std::find(names.features.begin(), names.features.end(), feature) == names.features.end()) {
        refuse(in, one, Code::kNotInTheJob, "feature", names.features);
      } else if (std::find(features.begin(), features.end(), feature) != features.end()) {
        refuse_twice(in, one, "feature whose burrs come off", "each feature once");
      } else {
        features.push_back(feature);
      }
    }
  };
  if (node.type() == text::Type::kList) {
    for (const text::Node& one : node)
      add(one);
  } else if (node.typed() != kAll) {
    add(node);
  }
  return features;
}

void read_deburring(const TableReader& in, const TableReader& table, const shop::Shop& shop,
                    const Names& names, route::Setup& setup) {
  route::Deburring burrs;
  burrs.after = setup.works.size();
  burrs.features = read_burrs(in, *table.node().find("deburr"), names);
  const auto with = table.node().find("with");
  if (with) burrs.tools = read_tools(in, table, shop);
  for (const shop::Tool& tool : burrs.tools) {
    if (!takes_burrs_off(tool.kind))
      in.problems().add(text::failure_at(*with, Code::kValueNotAccepted, tool.name,
                                         "a file, a deburring tool or a countersink"));
  }
  setup.deburrings.push_back(std::move(burrs));
}

}  // namespace

void refuse(const TableReader& in, const text::Node& node, Code code, std::string_view subject,
            const std::vector<std::string>& known) {
  auto failure = text::failure_at(node, code, node.typed(), base::known_words(node.typed(), known));
  failure.subject = subject;
  in.problems().add(std::move(failure));
}

// A feature is made once and a tool used once for it: their numbers are called by these names.
void refuse_twice(const TableReader& in, const text::Node& node, std::string_view subject,
                  std::string_view accepted) {
  auto failure = text::failure_at(node, Code::kNameTwice, node.typed(), accepted);
  failure.subject = subject;
  in.problems().add(std::move(failure));
}

bool makes(const route::Setup& setup, const std::string& feature) {
  return std::any_of(setup.works.begin(), setup.works.end(),
                     [&](const route::Work& work) { return work.feature == feature && !work.joins; });
}

std::vector<std::string> features_made(const std::string& written, const Names& names) {
  const auto row = names.rows.find(written);
  return row == names.rows.end() ? std::vector<std::string>{written} : row->second;
}

void read_works(const TableReader& in, const shop::Shop& shop, const Names& names, route::Setup& setup) {
  for (const TableReader& table : in.tables("do")) {
    const bool joins = table.node().find("join").has_value();
    const bool deburrs = table.node().find("deburr").has_value();
    const int of_three = (joins ? 1 : 0) + (deburrs ? 1 : 0) + (table.node().find("make") ? 1 : 0);
    if (of_three != 1) {
      in.problems().add(
          text::failure_at(table.node(), Code::kKeyMissing, "make", "one of make, join and deburr"));
      continue;
    }
    if (!joins && !table.node().find("with"))
      in.problems().add(text::failure_at(table.node(), Code::kKeyMissing, "with", "its tools"));
    if (deburrs) {
      read_deburring(in, table, shop, names, setup);
      continue;
    }
    if (joins && !shop::is_by_hand(setup.machine.kind))
      in.problems().add(text::failure_at(*table.node().find("join"), Code::kValueNotAccepted, "join",
                                         "make, on this machine; pieces are joined at a bench"));
    read_work(in, table, joins ? "join" : "make", shop, names, setup);
  }
}

}  // namespace sparewright::job

-- What neovim.test.ts lets Neovim do once a journal is open: writes what came of it, as JSON, to the file that
-- DAYSTAVE_RESULT names. An error that nobody catches would leave Neovim waiting for ever.
local LIMIT = 10000 -- milliseconds

local function wait_for(what, condition)
  assert(vim.wait(LIMIT, condition, 20), "waited in vain for " .. what)
end

local function line(number)
  return vim.api.nvim_buf_get_lines(0, number - 1, number, true)[1]
end

-- Columns count from 0.
local function go_to(number, words)
  vim.api.nvim_win_set_cursor(0, { number, line(number):find(words, 1, true) - 1 })
end

local function floating_window()
  for _, window in ipairs(vim.api.nvim_list_wins()) do
    if vim.api.nvim_win_get_config(window).relative ~= "" then
      return window
    end
  end
end

local function try()
  local result = { type = vim.bo.filetype, remark = vim.bo.commentstring }
  -- Until the folder above is read its piece is not known, which is a second one.
  wait_for("one diagnostic", function()
    return #vim.diagnostic.get(0) == 1
  end)
  local found = vim.diagnostic.get(0)[1]
  result.diagnostic = { message = found.message, line = found.lnum + 1 }

  result.actions = {}
  vim.ui.select = function(actions, options, choose)
    for _, action in ipairs(actions) do
      local title = options.format_item(action) -- may be followed by a number
      table.insert(result.actions, title)
    end
    choose(actions[1], 1)
  end
  vim.api.nvim_win_set_cursor(0, { found.lnum + 1, found.col })
  local before = line(found.lnum + 1)
  vim.lsp.buf.code_action()
  wait_for("the fix", function()
    return line(found.lnum + 1) ~= before
  end)
  result.mended = line(found.lnum + 1)
  wait_for("no diagnostics", function()
    return #vim.diagnostic.get(0) == 0
  end)

  go_to(4, "D melodic minor")
  vim.lsp.buf.hover()
  wait_for("a hover", floating_window)
  local shown = vim.api.nvim_win_get_buf(floating_window())
  result.hover = table.concat(vim.api.nvim_buf_get_lines(shown, 0, -1, true), "\n")

  vim.api.nvim_buf_set_lines(0, -1, -1, true, { "Eb major, thi" })
  vim.api.nvim_win_set_cursor(0, { vim.api.nvim_buf_line_count(0), #"Eb major, thi" })
  local place = vim.lsp.util.make_position_params(0, "utf-16")
  place.position.character = #"Eb major, thi" -- in normal mode the cursor stays on the last letter
  local answers = vim.lsp.buf_request_sync(0, "textDocument/completion", place, LIMIT)
  local _, answer = next(answers)
  result.completion = vim.tbl_map(function(item)
    return item.label
  end, answer.result.items)

  local function text()
    return vim.trim(table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, true), "\n"))
  end
  -- The last line once a key has changed the text.
  local function pressed(key)
    local before = text()
    vim.api.nvim_feedkeys(key, "mx", false)
    wait_for(key, function()
      return text() ~= before
    end)
    return text():match("[^\n]*$")
  end
  vim.api.nvim_buf_set_lines(0, -2, -1, true, {})
  result.begun = pressed("\\d")
  go_to(4, "D melodic minor")
  result.faster = pressed("\\f")
  return result
end

local ok, result = pcall(try)
local file = assert(io.open(os.getenv("DAYSTAVE_RESULT"), "w"))
file:write(vim.fn.json_encode(ok and result or { failure = tostring(result) }))
file:close()
vim.cmd("quitall!")

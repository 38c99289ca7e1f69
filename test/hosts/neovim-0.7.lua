-- Neovim 0.7 can do what the recipe in syntaxes/OTHER-EDITORS.md asks for, and lacks three functions that came with
-- 0.8: here made of what it has. File types by Lua were there, and not yet switched on.
vim.g.do_filetype_lua = 1
vim.fs = {
  dirname = function(path)
    return vim.fn.fnamemodify(path, ":h")
  end,
  find = function(name, options)
    local folder = options.path
    while vim.fn.filereadable(folder .. "/" .. name) == 0 do
      local above = vim.fn.fnamemodify(folder, ":h")
      if above == folder then
        return {}
      end
      folder = above
    end
    return { folder .. "/" .. name }
  end,
}
vim.lsp.start = function(config)
  vim.lsp.buf_attach_client(0, vim.lsp.start_client(config))
end

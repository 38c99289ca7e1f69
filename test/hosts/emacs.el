;;; -*- lexical-binding: t -*-
;; What emacs.test.ts lets Emacs do in a journal: writes what came of it, as JSON, to the file that DAYSTAVE_RESULT names.
(require 'eglot)
(require 'json)

(defconst limit 10 "In seconds.")

(defun wait-for (what condition)
  "Let time pass until CONDITION holds; fail in WHAT's name when it does not in time."
  (with-timeout (limit (error "Waited in vain for %s" what))
    (while (not (funcall condition)) (accept-process-output nil 0.05))))

(defun text-of-line (number)
  (save-excursion
    (goto-char (point-min))
    (forward-line (1- number))
    (buffer-substring-no-properties (point) (line-end-position))))

(defun diagnostics ()
  "Those of the buffer, asked for again: nothing is displayed here, which would else be what asks."
  (flymake-start)
  (flymake-diagnostics))

(defun try ()
  (find-file "2026/week.practice")
  (run-hooks 'post-command-hook) ; a command has ended: `eglot-ensure' waits for that
  (wait-for "the server" #'eglot-current-server)
  (wait-for "one diagnostic" (lambda () (= (length (diagnostics)) 1)))
  (let* ((found (car (diagnostics)))
         (line (line-number-at-pos (flymake-diagnostic-beg found)))
         (before (text-of-line line))
         (last-nonmenu-event t) ; by keyboard, not by a menu
         actions hover)
    (goto-char (flymake-diagnostic-beg found))
    (cl-letf (((symbol-function 'completing-read)
               (lambda (_prompt choices &rest _)
                 (setq actions (all-completions "" choices))
                 (car actions)))
              ((symbol-function 'y-or-n-p) #'always))
      (call-interactively #'eglot-code-actions))
    (wait-for "the fix" (lambda () (not (equal (text-of-line line) before))))
    (save-buffer) ; tells the server of the change, which else waits for an idle moment: here is none
    (goto-char (point-min))
    (search-forward "D melodic")
    (eglot-hover-eldoc-function (lambda (text &rest _) (setq hover text)))
    (wait-for "a hover" (lambda () hover))
    (goto-char (point-max))
    (insert "  Eb major, thi")
    (save-buffer)
    (pcase-let* ((`(,start ,end ,table . ,_) (eglot-completion-at-point))
                 (typed (buffer-substring-no-properties start end)))
      `((type . ,(symbol-name major-mode))
        (remark . ,(concat comment-start "%s"))
        (diagnostic . ((message . ,(flymake-diagnostic-text found)) (line . ,line)))
        (actions . ,(vconcat actions))
        (mended . ,(text-of-line line))
        (hover . ,(substring-no-properties hover))
        (completion . ,(vconcat (mapcar (lambda (each) (string-trim (substring-no-properties each)))
                                        (all-completions typed table))))
        ,@(progn
            (delete-region (line-beginning-position) (point))
            `((begun . ,(pressed "C-c C-d"))
              (faster . ,(progn (goto-char (point-min))
                                (search-forward "D melodic")
                                (pressed "C-c C-f")))))))))

(defun pressed (keys)
  "The last line once KEYS have changed the text."
  (let ((before (buffer-string)))
    (call-interactively (key-binding (kbd keys)))
    (wait-for keys (lambda () (not (equal (string-trim (buffer-string)) (string-trim before)))))
    (car (last (split-string (string-trim (buffer-substring-no-properties (point-min) (point-max))) "\n")))))

(let ((result (condition-case failure (try) (error `((failure . ,(error-message-string failure)))))))
  (with-temp-file (getenv "DAYSTAVE_RESULT") (insert (json-encode result))))

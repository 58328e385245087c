@echo off
rem Tells Windows, for whoever runs it, that layout files (.longlow) open with Longlow where it lies now.
rem register.cmd /remove takes it back.
setlocal
set "PROGRAM=%~dp0longlow-window.exe"
set "CLASSES=HKCU\Software\Classes"
if /i "%~1"=="/remove" (
  reg delete "%CLASSES%\Longlow.Layout" /f
  reg delete "%CLASSES%\.longlow" /f
  exit /b
)
reg add "%CLASSES%\.longlow" /ve /d Longlow.Layout /f || exit /b 1
reg add "%CLASSES%\Longlow.Layout" /ve /d "Longlow layout" /f || exit /b 1
reg add "%CLASSES%\Longlow.Layout\DefaultIcon" /ve /d "\"%PROGRAM%\"" /f || exit /b 1
reg add "%CLASSES%\Longlow.Layout\shell\open\command" /ve /d "\"%PROGRAM%\" open \"%%1\"" /f || exit /b 1

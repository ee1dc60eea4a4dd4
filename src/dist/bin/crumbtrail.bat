@echo off
rem Starts Crumbtrail. Looks for Java in CRUMBTRAIL_JAVA, beside this script (runtime\), in JAVA_HOME and on the path.
setlocal
set "CT_HOME=%~dp0.."
set "CT_JAVA=%CRUMBTRAIL_JAVA%"
if not defined CT_JAVA if exist "%CT_HOME%\runtime\bin\java.exe" set "CT_JAVA=%CT_HOME%\runtime\bin\java.exe"
if not defined CT_JAVA if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "CT_JAVA=%JAVA_HOME%\bin\java.exe"
if not defined CT_JAVA set "CT_JAVA=java.exe"
set "CT_HEAP=%CRUMBTRAIL_HEAP%"
set "CT_YOUNG=-Xms16m"
if not defined CT_HEAP if "%~1"=="serve" set "CT_YOUNG=-Xms68m -Xmn44m"
if not defined CT_HEAP if "%~1"=="serve" set "CT_HEAP=256m"
if not defined CT_HEAP set "CT_HEAP=512m"
set "CT_OPTIONS=-Xms224m -Xmn192m -Xmx512m -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData"
if "%~1"=="serve" set "CT_OPTIONS=-Xmx%CT_HEAP% %CT_YOUNG% -XX:+UseSerialGC -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=20"
if "%~1"=="batch" set "CT_OPTIONS=-Xmx%CT_HEAP% -XX:+UseParallelGC"
if "%~1"=="rules" set "CT_OPTIONS=-Xmx%CT_HEAP% -XX:+UseParallelGC"
if "%~1"=="log" set "CT_OPTIONS=-Xmx%CT_HEAP% -XX:+UseParallelGC"
"%CT_JAVA%" %CT_OPTIONS% -jar "%CT_HOME%\lib\crumbtrail.jar" %*
exit /b %ERRORLEVEL%
